using System.Globalization;
using System.Text;

namespace WarmupConsole.App.Shell;

/// <summary>Completions for three shells, from the command tree: commands, options, and files where files are wanted.</summary>
internal static class Completions
{
    internal static string Bash(CommandEntry root)
    {
        StringBuilder script = new("# Completions for bash, written by `warmup shell bash`: source this file.\n_warmup() {\n    local current=\"${COMP_WORDS[COMP_CWORD]}\" before=\"${COMP_WORDS[COMP_CWORD-1]}\" path=warmup words=\"\" files=\"\" word\n");
        Walk(script, root, "\"${COMP_WORDS[@]:1:COMP_CWORD-1}\"", "path");
        script.Append("    case \"$before\" in\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, option => option.TakesFolder)}) mapfile -t COMPREPLY < <(compgen -d -- \"$current\"); return ;;\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, option => option.TakesFile)}) mapfile -t COMPREPLY < <(compgen -f -- \"$current\"); return ;;\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, TakesOther)}) COMPREPLY=(); return ;;\n    esac\n    case \"$path\" in\n");
        foreach (CommandEntry command in root.All)
        {
            script.Append(CultureInfo.InvariantCulture, $"        \"{command.Path}\") words=\"{string.Join(' ', Words(command))}\"{(command.TakesFiles ? " files=yes" : "")} ;;\n");
        }

        return script.Append("    esac\n    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$current\"; [ -z \"$files\" ] || compgen -f -- \"$current\")\n}\ncomplete -o filenames -F _warmup warmup\n").ToString();
    }

    internal static string Zsh(CommandEntry root)
    {
        StringBuilder script = new("#compdef warmup\n# Completions for zsh, written by `warmup shell zsh`: put this file as _warmup into a folder of $fpath.\n_warmup() {\n    local path_=warmup word files=\n    local -a found\n");
        Walk(script, root, "${words[2,CURRENT-1]}", "path_");
        script.Append("    case \"${words[CURRENT-1]}\" in\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, option => option.TakesFolder)}) _files -/; return ;;\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, option => option.TakesFile)}) _files; return ;;\n");
        script.Append(CultureInfo.InvariantCulture, $"        {Names(root, TakesOther)}) return ;;\n    esac\n    case \"$path_\" in\n");
        foreach (CommandEntry command in root.All)
        {
            IEnumerable<string> found = command.Children.Select(child => (child.Name, child.About)).Concat(command.Options.Select(option => (option.Name, option.About)))
                .Select(word => Quoted($"{word.Item1.Replace(":", "\\:", StringComparison.Ordinal)}:{word.Item2}"));
            script.Append(CultureInfo.InvariantCulture, $"        '{command.Path}') found=({string.Join(' ', found)}){(command.TakesFiles ? " files=yes" : "")} ;;\n");
        }

        return script.Append("    esac\n    _describe warmup found\n    [[ -z $files ]] || _files\n}\n_warmup \"$@\"\n").ToString();
    }

    internal static string Fish(CommandEntry root)
    {
        StringBuilder script = new("# Completions for fish, written by `warmup shell fish`: put this file into ~/.config/fish/completions.\ncomplete -c warmup -f\n");
        foreach (CommandEntry command in root.All)
        {
            string children = string.Join(' ', command.Children.Select(child => child.Name));
            string seen = string.Join("; and ", command.Path.Split(' ').Skip(1).Select(word => $"__fish_seen_subcommand_from {word}"));
            string at = seen.Length == 0 ? "__fish_use_subcommand" : children.Length == 0 ? seen : $"{seen}; and not __fish_seen_subcommand_from {children}";
            foreach (CommandEntry child in command.Children)
            {
                script.Append(CultureInfo.InvariantCulture, $"complete -c warmup -n {Quoted(at)} -a {child.Name} -d {Quoted(child.About)}\n");
            }

            foreach (OptionEntry option in command.Options.Where(option => option.Name.StartsWith("--", StringComparison.Ordinal)))
            {
                string value = option.TakesFolder ? " -r -a '(__fish_complete_directories)'" : option.TakesFile ? " -r -F" : option.Value.Length > 0 ? " -x" : "";
                script.Append(CultureInfo.InvariantCulture, $"complete -c warmup -n {Quoted(at)} -l {option.Name[2..]}{value} -d {Quoted(option.About)}\n");
            }

            script.Append(command.TakesFiles ? $"complete -c warmup -n {Quoted(at)} -F\n" : "");
        }

        return script.ToString();
    }

    /// <summary>Finds how deep into the tree the words before the cursor lead.</summary>
    private static void Walk(StringBuilder script, CommandEntry root, string words, string path)
    {
        string known = string.Join('|', root.All.Skip(1).Select(command => $"\"{command.Path}\""));
        script.Append(CultureInfo.InvariantCulture, $"    for word in {words}; do\n        case \"${path} $word\" in\n            {known}) {path}=\"${path} $word\" ;;\n        esac\n    done\n");
    }

    /// <summary>A value that no shell can guess.</summary>
    private static bool TakesOther(OptionEntry option) => option is { Value.Length: > 0, TakesFile: false, TakesFolder: false };

    private static string Names(CommandEntry root, Func<OptionEntry, bool> isMeant) =>
        string.Join('|', root.All.SelectMany(command => command.Options).Where(isMeant).Select(option => option.Name).Distinct().Order(StringComparer.Ordinal));

    private static IEnumerable<string> Words(CommandEntry command) => command.Children.Select(child => child.Name).Concat(command.Options.Select(option => option.Name));

    private static string Quoted(string text) => $"'{text.ReplaceLineEndings(" ").Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
