# Completions for bash, written by `warmup shell bash`: source this file.
_warmup() {
    local current="${COMP_WORDS[COMP_CWORD]}" before="${COMP_WORDS[COMP_CWORD-1]}" path=warmup words="" files="" word
    for word in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
        case "$path $word" in
            "warmup run"|"warmup ports"|"warmup review"|"warmup review dismiss"|"warmup review restore"|"warmup plan"|"warmup plan next"|"warmup plan explain"|"warmup plan edit"|"warmup season"|"warmup check"|"warmup keys"|"warmup export"|"warmup new"|"warmup ranges"|"warmup ranges check"|"warmup ranges accept"|"warmup need"|"warmup need add"|"warmup need list"|"warmup need done"|"warmup exercises"|"warmup exercises list"|"warmup exercises find"|"warmup exercises show"|"warmup exercises add"|"warmup score"|"warmup score map"|"warmup score look"|"warmup score need"|"warmup score drill"|"warmup shell"|"warmup shell man"|"warmup shell bash"|"warmup shell zsh"|"warmup shell fish") path="$path $word" ;;
        esac
    done
    case "$before" in
        --choir) mapfile -t COMPREPLY < <(compgen -d -- "$current"); return ;;
        --html|--midi|--musicxml|--out|--record|--sheet|--trace) mapfile -t COMPREPLY < <(compgen -f -- "$current"); return ;;
        --articulation|--bars|--by|--date|--dynamics|--exercise|--focus|--id|--instruction|--kind|--language|--limit|--line|--listen|--minutes|--mode|--most|--part|--passage|--piece|--pitch|--port|--purpose|--purposes|--reach|--region|--rehearsal|--shape|--stage|--start|--syllables|--tempo|--title|--tolerance|--tonight|--until|--use|--variant|--voices|--weeks|--why) COMPREPLY=(); return ;;
    esac
    case "$path" in
        "warmup") words="run ports review plan season check keys export new ranges need exercises score shell --help --version" ;;
        "warmup run") words="--choir --port --record --trace --open --resume --anew --tour --help" files=yes ;;
        "warmup ports") words="--test --use --port --json --help" ;;
        "warmup review") words="dismiss restore --choir --json --all --html --csv --screen --weeks --help" ;;
        "warmup review dismiss") words="--why --choir --json --help" ;;
        "warmup review restore") words="--choir --json --help" ;;
        "warmup plan") words="next explain edit --help" ;;
        "warmup plan next") words="--choir --date --minutes --rehearsal --focus --tonight --variant --json --help" ;;
        "warmup plan explain") words="--choir --focus --tonight --json --help" files=yes ;;
        "warmup plan edit") words="--choir --port --help" files=yes ;;
        "warmup season") words="--choir --json --help" ;;
        "warmup check") words="--choir --json --help" files=yes ;;
        "warmup keys") words="--choir --exercise --start --shape --limit --reach --tolerance --by --most --octave --json --help" files=yes ;;
        "warmup export") words="--choir --midi --musicxml --sheet --part --force --json --help" files=yes ;;
        "warmup new") words="--voices --json --help" files=yes ;;
        "warmup ranges") words="check accept --choir --json --help" ;;
        "warmup ranges check") words="--choir --part --port --help" ;;
        "warmup ranges accept") words="--choir --json --help" ;;
        "warmup need") words="add list done --help" ;;
        "warmup need add") words="--part --pitch --region --purpose --kind --piece --bars --until --choir --json --help" ;;
        "warmup need list") words="--choir --all --json --help" ;;
        "warmup need done") words="--choir --json --help" ;;
        "warmup exercises") words="list find show add --help" ;;
        "warmup exercises list") words="--stage --purpose --choir --json --help" ;;
        "warmup exercises find") words="--stage --purpose --choir --json --help" ;;
        "warmup exercises show") words="--choir --json --help" ;;
        "warmup exercises add") words="--id --title --stage --mode --line --syllables --tempo --dynamics --articulation --purposes --instruction --listen --yes --choir --port --json --help" ;;
        "warmup score") words="map look need drill --help" ;;
        "warmup score map") words="--part --yes --choir --json --help" files=yes ;;
        "warmup score look") words="--choir --json --html --played --all --language --help" files=yes ;;
        "warmup score need") words="--part --passage --bars --until --language --choir --json --help" files=yes ;;
        "warmup score drill") words="--part --bars --simple-rhythm --syllables --out --language --choir --json --help" files=yes ;;
        "warmup shell") words="man bash zsh fish --help" ;;
        "warmup shell man") words="--help" ;;
        "warmup shell bash") words="--help" ;;
        "warmup shell zsh") words="--help" ;;
        "warmup shell fish") words="--help" ;;
    esac
    mapfile -t COMPREPLY < <(compgen -W "$words" -- "$current"; [ -z "$files" ] || compgen -f -- "$current")
}
complete -o filenames -F _warmup warmup
