using System.CommandLine;
using WarmupConsole.App.Running;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup run</c>: lead a warm-up.</summary>
internal static class RunCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<string?> port = Options.Port();
        Option<string?> record = new("--record") { Description = AppTexts.RecordAbout, HelpName = "FILE" };
        Option<string?> trace = new("--trace") { Description = AppTexts.TraceAbout, HelpName = "FILE" };
        Option<bool> open = new("--open") { Description = AppTexts.OpenAbout };
        Option<bool> resume = new("--resume") { Description = AppTexts.ResumeAbout };
        Option<bool> anew = new("--anew") { Description = AppTexts.AnewAbout };
        Option<bool> tour = new("--tour") { Description = AppTexts.TourAbout };
        Command command = new("run", AppTexts.RunAbout);
        command.Add(plan);
        foreach (Option option in (Option[])[choir, port, record, trace, open, resume, anew, tour])
        {
            command.Add(option);
        }

        command.Validators.Add(typed =>
        {
            if (typed.GetValue(resume) && typed.GetValue(anew))
            {
                typed.AddError(AppTexts.ResumeOrAnew);
            }
        });
        command.SetAction(parsed => new Leading(composition, parsed.InvocationConfiguration).Run(new(
            parsed.GetValue(plan),
            parsed.GetValue(choir),
            parsed.GetValue(port),
            new(parsed.GetValue(record), parsed.GetValue(trace)),
            parsed.GetValue(open),
            parsed.GetValue(resume) ? true : parsed.GetValue(anew) ? false : null)
        {
            Tour = parsed.GetValue(tour),
        }));
        return command;
    }
}
