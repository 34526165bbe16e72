using Runup.Commissioning.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>What single differences do to a start and a stop: the settings of the side that runs well, with one of the other side's values put in.</summary>
/// <remarks>Where neither side runs well, no single value can be blamed, and none is.</remarks>
internal sealed class RunConsequences
{
    private static readonly IReadOnlyList<Setting> Felt =
    [
        Setting.MaximumFrequency, Setting.BaseFrequency, Setting.MaximumOutputVoltage, Setting.VfCharacteristic, Setting.TorqueBoost,
        Setting.AccelerationTime, Setting.DecelerationTime, Setting.CurrentLimit, Setting.MotorOverloadCurrent, Setting.OvervoltageControl,
        Setting.BrakingChopper, Setting.SlipCompensation, Setting.StoppingMethod, Setting.DcBrakingCurrent, Setting.DcBrakingTime, Setting.DcBrakingFrequency,
    ];

    private readonly JobContext context;
    private readonly bool leftIsFine;
    private readonly RunLook? fine;

    /// <summary>Whether a start or a stop can feel a setting at all.</summary>
    internal static bool IsFelt(Setting setting) => Felt.Contains(setting);

    internal RunConsequences(JobContext context, HeldState left, HeldState right, CancellationToken cancellation)
    {
        this.context = context;
        Left = RunLook.At(context, left.Settings, cancellation);
        Right = RunLook.At(context, right.Settings, cancellation);
        leftIsFine = Left is { IsFine: true };
        fine = leftIsFine ? Left : Right is { IsFine: true } ? Right : null;
        Base = leftIsFine ? left.Settings : right.Settings;
    }

    /// <summary>The run with all of the left side; null where it can't be told.</summary>
    internal RunLook? Left { get; }

    /// <summary>The run with all of the right side; null where it can't be told.</summary>
    internal RunLook? Right { get; }

    private SettingSet Base { get; }

    /// <summary>Whether it is the right side's values that are put in.</summary>
    internal bool OfRight => leftIsFine;

    /// <summary>What the other side's value does, in a sentence's rest; null where nothing, or nothing can be told.</summary>
    internal string? Of(StateDifference difference, CancellationToken cancellation)
    {
        if (fine is null || difference is not { Setting: { } setting, SaysTheSame: false } || !Felt.Contains(setting))
        {
            return null;
        }

        var side = leftIsFine ? difference.Right : difference.Left;
        return side.Value is not { } value ? null : RunLook.At(context, Base.With(setting, value), cancellation)?.Against(fine);
    }
}
