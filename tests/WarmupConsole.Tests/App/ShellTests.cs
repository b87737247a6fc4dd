using System.Diagnostics;
using WarmupConsole.Tests.Tui;

namespace WarmupConsole.Tests.App;

/// <summary>Manual page and completions stand in the tree as the commands are now. WARMUP_ACCEPT=1 writes them anew.</summary>
public class ShellTests
{
    [Theory]
    [InlineData("man", "warmup.1")]
    [InlineData("bash", "warmup.bash")]
    [InlineData("zsh", "_warmup")]
    [InlineData("fish", "warmup.fish")]
    public void The_page_is_what_the_commands_say(string page, string file) => GoldenText.CheckFile(GoldenText.Docs(Path.Combine("shell", file)), Written(page));

    [Theory]
    [InlineData("man")]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void Every_command_and_every_option_is_there_and_what_is_hidden_is_not(string page)
    {
        string text = Written(page).Replace("\\-", "-", StringComparison.Ordinal);
        Assert.All(["run", "plan", "edit", "review", "shell", "resume", "choir", "record", "port"], word => Assert.Contains(word, text));
        Assert.DoesNotContain("player", text);
    }

    [Theory]
    [InlineData("warmup ", "run plan check")]
    [InlineData("warmup plan ", "next edit")]
    [InlineData("warmup run --", "--resume --choir --tour")]
    [InlineData("warmup run --port x --an", "--anew")]
    public void Bash_completes_what_may_follow(string typed, string offered)
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "bash is not here");
        string script = $"{Written("bash")}\nread -ra COMP_WORDS <<< \"{typed.Trim()}\"\n{(typed.EndsWith(' ') ? "COMP_WORDS+=(\"\")\n" : "")}COMP_CWORD=$((${{#COMP_WORDS[@]}} - 1))\n_warmup\necho \"${{COMPREPLY[@]}}\"\n";
        string[] replies = Shell("/bin/bash", ["--norc", "-s"], script).Split(' ', StringSplitOptions.TrimEntries);
        Assert.All(offered.Split(' '), word => Assert.Contains(word, replies));
    }

    [Theory]
    [InlineData("warmup ", "run plan check")]
    [InlineData("warmup plan ", "next edit")]
    [InlineData("warmup run --", "--resume --choir --tour")]
    public void Fish_completes_what_may_follow(string typed, string offered)
    {
        Assert.SkipUnless(File.Exists("/usr/bin/fish"), "fish is not here");
        string said = Shell("/usr/bin/fish", ["--no-config"], $"{Written("fish")}\ncomplete -C '{typed}'\n");
        Assert.All(offered.Split(' '), word => Assert.Contains(word, said.Split('\n').Select(line => line.Split('\t')[0])));
    }

    [Fact]
    public void Zsh_reads_the_page_without_a_complaint()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/zsh"), "zsh is not here");
        Assert.Equal("", Shell("/usr/bin/zsh", ["-f", "-n", "-s"], Written("zsh")));
    }

    private static string Written(string page)
    {
        using ToolRun tool = new();
        Assert.Equal(0, tool.Call("shell", page));
        return tool.Output;
    }

    private static string Shell(string program, string[] arguments, string script)
    {
        using Process shell = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        shell.StandardInput.Write(script);
        shell.StandardInput.Close();
        string said = shell.StandardOutput.ReadToEnd();
        Assert.Equal("", shell.StandardError.ReadToEnd());
        shell.WaitForExit();
        return said.Trim();
    }
}
