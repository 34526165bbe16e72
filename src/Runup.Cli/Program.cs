using Runup.Cli.Terminal;
using Spectre.Console.Cli;

namespace Runup.Cli;

/// <summary>The program: verbs in the order of the job.</summary>
internal static class Program
{
    private static int Main(string[] arguments)
    {
        Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        Console.SetError(new VisibleWriter(Console.Error));
        var app = new CommandApp();
        app.Configure(Verbs.Configure);
        try
        {
            return OptionWithoutValue.In(arguments) is { } cutShort ? WrongUsage(cutShort) : app.Run(arguments);
        }
        catch (Complaint complaint)
        {
            Console.Error.WriteLine(complaint.Message);
            return (int)complaint.Status;
        }
        catch (CommandAppException usage)
        {
            return WrongUsage(usage.Message.TrimEnd('.'));
        }
        catch (DirectoryNotFoundException missing)
        {
            Console.Error.WriteLine($"runup: {missing.Message.TrimEnd('.')}; a folder that is there would do");
            return (int)ExitStatus.BadInput;
        }
        catch (IOException io)
        {
            Console.Error.WriteLine($"runup: {io.Message}");
            return (int)ExitStatus.BadInput;
        }
        catch (UnauthorizedAccessException denied)
        {
            Console.Error.WriteLine($"runup: {denied.Message.TrimEnd('.')}; a place that this user may write to would do");
            return (int)ExitStatus.BadInput;
        }
#pragma warning disable CA1031 // The last place that an error of ours can reach: a person gets one line, and the rest goes where they ask for it.
        catch (Exception ours) when (Environment.GetEnvironmentVariable("RUNUP_TRACE") is null)
        {
            Console.Error.WriteLine($"runup: a mistake in Runup itself ({ours.GetType().Name}: {ours.Message.ReplaceLineEndings(" ")}); please report it, with what you did");
            return (int)ExitStatus.BadInput;
        }
#pragma warning restore CA1031
    }

    private static int WrongUsage(string what)
    {
        Console.Error.WriteLine($"runup: {what}; `runup --help` lists the verbs, `runup VERB --help` what each takes");
        return (int)ExitStatus.BadInput;
    }
}
