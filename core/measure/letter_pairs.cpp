// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/letter_pairs.h"

#include <cmath>

namespace trueunit {

namespace {

// Rows: the gap between words, then A to Z; columns alike. Half bits, 'a' for none.
constexpr std::array kLanguages = {
    LetterPairs{"English",
                {{
                    "ygjikljlkhnnkjlijtkignojzqt", "gymkkppmqlsogjfzmzghgmnptmr", "jgowwexyvizzhxugxzhmthzyzgz",
                    "igznygzzghzkkzwfzzknhkzzzoz", "cizyofzpxgzzpqwjzzllwjrqzoz", "djpkhlonsnzsjlhontghkqnoooz",
                    "djzxxikywgzzlxufyzhvkmzzzzz", "ehywofxphhzzjxkjyzhmoizzzmz", "ggzyyczzygzzqrohzzmwmlzqzoz",
                    "liohljnlzszqjmehnzkfhrkzrzp", "metrrfssqoyvqroeszppoeutztz", "ehvttfvvmgzylmhjvzriruxwzmz",
                    "fgnykgprygzqhnwhqzxklkprziz", "gfixxezzxhzzxkvhizvlvjzzzoz", "ditjgiqhsizpqqmjzzsjhnqzzot",
                    "hnnklqgmqozojiflkzfkkilkrqz", "ifywwfyyjizzhxugkzfmkizzzzz", "jlqookpqnlwsnolmpzmmlbsqxqx",
                    "fhpmkfqmsgzmmljhpzmjjlorzkz", "dlslzhzzjizpoorjlzyjflzqzoz", "fiqqzgzzegzznryhzzjlmlzozkz",
                    "ljjjkjpkxkzpiifvkzgghyzzzzz", "kgwuucwwuezzuvsjwzsssvyxznz", "hdxvvgxxggzzvwhhxzkltwzyzyz",
                    "dhrpphrrpfxupqnngznngqtsysz", "blynojxxvnzzllmkmznjowzyzyz", "ferppeqrofxtoqnhqznnnqtryry",
                }}},
    LetterPairs{"German",
                {{
                    "yijmghkjlhnkljllkulhljjjzul", "iolkkillkmzogifznzhiihpstpq", "jgyxvcyowhzyjxtjzzilmhzzzzo",
                    "mkzywlzybnziqyujzzvvopzzzzz", "fiszyczrrgzpnzqlzzmnllzpzzz", "fpmnmqpmmgzpjkfrqzeikmspsso",
                    "ggxwugimvhzyiwsiyzhmghzyzzz", "fizywdzpoizpjynlzzhjkkzzzzz", "ggqzxdzzyizrjmjizzhlikzmzqz",
                    "kmpinfnkpyzljjekqzlfhqozzzp", "mcsrpftrqoytqrngtzoopfutzyu", "gfxwufywvizyiktgyzhkhizzzzz",
                    "hgmplfnnqfznhmnjpzqiikqzzpo", "egkywfpyxgzzpjujlzvmmkzzzzz", "djopggoipjznpsllzzrjinsqzsm",
                    "jplljilllozmhieolzfjklmlzzp", "jgxvugjwigzxjvsgjzfmjjzyzzy", "ilonlipnmkupmnjmpzkklcqpyuq",
                    "dimnjgnknhzlmmkjpznjikrozrn", "fknfrhqnnizoopxlkzqiensqzpr", "dhqzzeppkhzrlqrkszjjkkznzpl",
                    "kmnjngjlqozokieylzggiyzzzzp", "kiwvtdxvugzwuvrdxzsssuyxzzy", "jewvudxvuezxuvsiyzsttiyyzzy",
                    "dlonmipnmevpmnknqzkllmqqzuq", "djtrqitsroztjiirjzjgjrvuzyu", "fknvtexvugzxuvrkxzssjeyhzzy",
                }}},
    LetterPairs{"French",
                {{
                    "yhlifgkmmlnqgjllinkiljmqusu", "fymkmpqlrhsrhkfrlrgkhimztor", "kfyvufyxyhzzgvsgvzfmtiyzzmz",
                    "jgznxfzzghzmkyvezqjqikzzzpz", "ghzzyczzzhzzxqwjzzlpxhzzzzz", "dnqlolqnzpzzkkhqmtigikotpsu",
                    "igyvugixyfzzkvsfvzettjyzzzz", "igzvvezymfzzjwhiwzgtthzzzzz", "ieyvueyxyfzznvlgwzltljyzzlz",
                    "ilojmgmlzrzshmghnjjggrlzqzs", "mfvrrevuupyzqspeswpppfvzyxz", "detqpftstgxxoqohrvoooptzxwz",
                    "ffpzpdspzhzzhpxiqzynnkszzpz", "ifixxezzzgzzwhvhizwppizzzqz", "eizijfplzjzszzjjzsqhfnpzzrt",
                    "krmkmqnlrjzrjheoksgkkgmqsoz", "mezxwfzzjjzziyvfjzfnkjzzzzz", "orxttpxwxrzzsursuyrrraxzzzz",
                    "ggomlermzgzqollhqsljimpzzpz", "djzmzgzzpizrrqrimqyjfkzzzpz", "dhrrzfzzkgzzszyjzzhlmjzzzqz",
                    "gmmmmgrozirzklfymzgiiylzkzz", "kfyvudyxyezztvshvzittnyzzzz", "fdspofsrsewwnpmnqunnnosywvz",
                    "cjurqhuuugyzqspqiwppiquzyxz", "dhwjsivvvqzzjijijxigkrwzzyz", "efspofsrsgvwnpmgptnmmnsyvvz",
                }}},
    LetterPairs{"Italian",
                {{
                    "yhmhfhkloirqjkjliokhkjmruut", "dymmmqpltnzsgkgzmzhkhnnzzrl", "lfhuugywzezzivshvzguthyzzzz",
                    "nfzjyhzzggzokzwezrkypkzzzzz", "igzyqdzzzdzzwzwizzmqxlzzzzz", "dmqllrrkzmzzglhpqugijqottsq",
                    "kgyuugiwzezzmvsgvzfuthyzzzz", "khzvvhzilezzgxihxzhvuizzzzz", "ifxttcxwyfzzsvmivzmtllxzzzy",
                    "ehpimkomzrztikghmzmjhnlzzzm", "idqmmjqprjyvloleovlmlnqxzwr", "dftppftsugzxohniryopoqtzzzu",
                    "efopqgsrzgzzfnyirzyrllrzzsz", "iekxwezzzgzzvkvgizwwvhzzzzz", "fgzjifplzhzsyzlhzszlfnrzzsm",
                    "drplmroltnztiifqlzhjlolrztt", "nfzwwfzzpgzzmyvfizfpvjzzzzz", "lntppntsunzyorooryopoatzzzu",
                    "ifollfrmzfzrollgqzllilpzzqp", "iiziygqznfzqqpwhkzxhfipzzzz", "kfzzzfzzmfzzrzyfzzhrhjzzzrz",
                    "jhklljpnzjzzjjdkkzhiiyzzzzn", "meyuueyxzezztvsgwztutvmzzzz", "fdsoogsqsezwmpmmpxnnmoryzxs",
                    "bjqmmjqoqjyuknkknvlmknqxzvq", "bhsoomsrtmzxnqnnqxnonpszzyt", "lfxttjxwyczzsvshvzstsuxzzzf",
                }}},
    LetterPairs{"Spanish",
                {{
                    "yilhfgkmmlnqhjmlimlikjmrtks", "dymjhpqntnpthjgunuhhknpzzoq", "lfyuuhzyzfzzgwthwzeouizzzzz",
                    "nfzmxhzzjezomzwezzkxjizzzzz", "jgzzyczzzhzzysxgzzmyylzzzzz", "dmpkmsqmzqqzhlfonshfmqozorp",
                    "kgxutgyxzfzzkvsgvzftueyzzyz", "kfyuugzynfzziwkgwzguufzzzzz", "idwtsfxwyfzzsurfvzmsmiyzzyz",
                    "lgngihnlzqrsjkggmzlhiolzzzm", "neurqfvuwpyzqspetyqqrewzzwy", "dfsoogtsugvyognnqwnnoptzytw",
                    "eepqphrpzgzzjnxgrzyqmlqzzsz", "kehwwfzzzgzzwpvgizvvwhzzzzz", "dgzijiplzistztphzsykgnqzzsp",
                    "dqlkmqpnsqszjifrnzggmomstqs", "nezwvfzzoizzjyveyzfpmizzzzz", "novrrowvwqyzrtqptyqqrawzzwy",
                    "gfpllfrlzfzrokmgqqkmilpzzrq", "cizlphzzqhzspoxjkzypgjzzzzz", "keqyxezzmgzzqzwfzzgqpizzzzz",
                    "jikkkfzmzjqzjleqmziikypzrnq", "lextsexxydzzsvsgvzsstuyzzyz", "fdqmmjrqsfuwmolloullmnrywru",
                    "emspoltsudwyoqnnhwoofptzytw", "bjxtsjxxyszzsvsivzsstuyzzyz", "ecurqnvuwkyzqspfsyqqrkvzzvy",
                }}},
    LetterPairs{"Dutch",
                {{
                    "yjjlghmjihnlljljjzljjmhkzum", "jgollpnlrntkhjezmzgjhmotzqr", "lgnxudzwxgzxjwthxzgouixzzzz",
                    "khzyvhzxdhzklxtgyzmvhkxzzzz", "fjzzoczrrgzryzwjzzlkmlzqzzz", "epoolhpmrmznikernzgkionqsto",
                    "fhwvjhjmvgywmvrhwzfkimvxzzz", "fjzzmczonhzzoymkzzikllyzzzz", "igzzwczyyhzzwyohzzlvhkyzzzz",
                    "klqjkgqkzrhljnekpznfhrostzq", "fgxwihlvvsyeuvgiwzsksilxzzz", "fgyyvfzxpizlkkohyzkjglxozzz",
                    "gfnqjgomrfzminvipzxiilozzoz", "gfjzmdzyyhzzxluikzvlmlyzzqz", "cjqnhisjrkzoqtnlzzrihprmzss",
                    "jpnmmiklpnzmijfgizfkkjkozss", "gfyyvfznnizygxthjzgmllxzzzz", "hjoolhqnnkqolnjkozkkkcnpxtr",
                    "fhnoigqlpgzlklmhozliilnpzqp", "dkpipgzsnkpnmpqlkzsjfnrszqs", "dipzzfzplissqsxjzzjinkroznr",
                    "kklljlzlyezojjhvozggjjokozn", "mczyvezxygzykxufyzmvvyyzzzz", "jexxndzwwgzxuwnexztntwwyzzz",
                    "ckppmiroofrpnokmpzlmlooqyus", "cjukqjwsspvtjijkkzjhpttuzzw", "jhvvsexuudxvtuqgvzrsriukzzy",
                }}},
};

}  // namespace

std::span<const LetterPairs> letterPairs() { return kLanguages; }

double LetterPairs::probability(int from, int to) const {
    const char halfBits = rows[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)];
    return std::exp2(-0.5 * (halfBits - 'a'));
}

}  // namespace trueunit
