namespace Runup.Commissioning.FirstRun;

/// <summary>What is said where a motor can be run.</summary>
public static class SafetyWords
{
    /// <summary>Beside every control that can run a motor.</summary>
    /// <param name="stopDevice">Where the machine's real stop device is, as the person said it.</param>
    public static string BesideRunControl(string stopDevice) =>
        $"Letting go asks the drive to stop, by software. That is no emergency stop and no safe torque off. The machine's real stop device: {stopDevice}; it was tested.";

    /// <summary>Beside every step in which a person runs the motor.</summary>
    /// <param name="stopDevice">Where the machine's real stop device is, as the person said it.</param>
    public static string BesideRunByPerson(string stopDevice) =>
        $"A stop at the panel or from a control is made by software. That is no emergency stop and no safe torque off. The machine's real stop device: {stopDevice}; it was tested.";

    /// <summary>Once on every page and report of a first run.</summary>
    public const string WhoDecides =
        "What is expected here is an estimate and no permission. Local codes, the makers' manuals and licensed people decide.";

    /// <summary>Before work on terminals.</summary>
    public const string BeforeTerminals =
        "Before work on terminals: isolate, lock, wait for the drive's discharge time and measure the DC terminals dead. No insulation test through a drive.";

    /// <summary>Of a motor whose rotor is a magnet.</summary>
    public const string Magnets =
        "The terminals of this motor are live while its shaft turns: lock the shaft before work on them.";
}
