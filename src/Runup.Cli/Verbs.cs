using Spectre.Console.Cli;

namespace Runup.Cli;

/// <summary>The verbs, in the order of the job, each with an example.</summary>
internal static class Verbs
{
    internal static void Configure(IConfigurator config)
    {
        config.SetApplicationName("runup");
        config.SetApplicationVersion(typeof(Verbs).Assembly.GetName().Version!.ToString(3));
        config.PropagateExceptions();
        config.ValidateExamples();
    }
}
