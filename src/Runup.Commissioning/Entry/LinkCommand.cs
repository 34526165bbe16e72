using Runup.Commissioning.FirstRun;

namespace Runup.Commissioning.Entry;

/// <summary>A command over the link; a closed set. None of them resets a trip.</summary>
public abstract record LinkCommand
{
    private LinkCommand()
    {
    }

    /// <summary>Walks the drive's state machine to switched on: power, no torque, no run command.</summary>
    public sealed record Prepare : LinkCommand;

    /// <summary>Stop by the drive's way of stopping.</summary>
    public sealed record Stop : LinkCommand;

    /// <summary>Remove voltage: the motor coasts.</summary>
    public sealed record Coast : LinkCommand;

    /// <summary>Run. Only a <see cref="RunPermit"/> makes one.</summary>
    public sealed record Run : LinkCommand
    {
        internal Run(RunPermit permit, double frequencyHz)
        {
            permit.Demand(frequencyHz);
            FrequencyHz = frequencyHz;
        }

        /// <summary>Output frequency in Hz; negative is reverse.</summary>
        public double FrequencyHz { get; }
    }
}
