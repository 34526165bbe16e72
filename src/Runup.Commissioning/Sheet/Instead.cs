using Runup.Settings;

namespace Runup.Commissioning.Sheet;

/// <summary>What to do about a setting for which a drive has no parameter. Common practice, no source.</summary>
internal static class Instead
{
    private const string Else = "Ask whoever planned the set whether it can do without, and write down the answer.";

    // The first that the setting's name begins with holds.
    private static readonly IReadOnlyList<(string Begins, string Advice)> Known =
    [
        ("motor-overload-current", "Protect the motor with an overload relay for the plate's current beside the drive, or with the sensor in its winding."),
        ("overload-trip-class", "Take it that the drive has one fixed class, look in its manual which, and see that it suits the run-up."),
        ("motor-cooling", "Do not run below half speed for long at full torque, or use the sensor in the winding."),
        ("motor-thermal-sensor", "Lead the sensor to a relay of its own that takes away the run release."),
        ("motor-connection", "See that the links in the terminal box fit the voltage entered; the drive does not need to know."),
        ("motor-rated-voltage", "Find out what the drive takes for it: commonly the supply's voltage; then see that the motor's is the same."),
        ("motor-rated-current", "Do not run it before it is known what the drive protects: fit an overload relay for the plate's current beside it."),
        ("motor-rated-frequency", "The drive takes the frequency at full voltage for it; see that this is the plate's."),
        ("motor-rated-speed", "The drive reckons without slip; expect the shaft a little slower than the display says."),
        ("motor-pole-count", "Read speeds from a tachometer; what the display says in rpm may be another motor's."),
        ("motor-rated-power", "Enter current, voltage and speed with care: the drive reckons the output from them."),
        ("motor-power-factor", "The drive finds it by itself or reckons without; look at the no-load current at the first run."),
        ("power-unit", "See in which unit the drive states power, and convert before entering."),
        ("base-frequency", "Find out at which frequency the drive gives full voltage; a motor for another one must not be run on it."),
        ("maximum-output-voltage", "The drive gives the supply's voltage at most; see that the motor's is not lower."),
        ("maximum-frequency", "Limit the reference in the control system, and by a speed monitor where the machine bears no more."),
        ("acceleration-time", "Ramp the reference in the control system, no faster than asked for, and look at the current."),
        ("deceleration-time", "Ramp the reference down in the control system, no faster than asked for, and look at the DC bus; a stop goes the drive's own way."),
        ("control-method", "The drive has one way of control; see at the first run that it carries the load at low speed."),
        ("run-command-source", "Find out where it takes the run command from, and wire that and nothing else."),
        ("frequency-reference-source", "Find out where it takes the frequency from, and wire that and nothing else."),
        ("torque-boost", "See at the first run that it breaks away; if it does not, look for automatic boost or a way of control that brings it."),
        ("vf-characteristic", "Leave the drive's own; part load costs a little more iron loss."),
        ("current-limit", "Lengthen the ramps so that the current stays below what motor and machine bear, and look at the first run."),
        ("second-", "Use the first ramps for both, with the longer time."),
        ("s-curve", "Lengthen the ramp where the machine takes jerks badly."),
        ("overvoltage-control", "Lengthen the deceleration until the DC bus stays below the trip, or fit a braking resistor."),
        ("braking-resistor", "Protect the resistor with a thermal switch that takes away the drive's supply."),
        ("braking-chopper", "Lengthen the deceleration or coast to stop, or fit a chopper of its own."),
        ("undervoltage-ride-through", "Expect a trip at a dip of the supply, and decide with the operator who starts it again."),
        ("phase-loss", "Watch the supply with a phase relay before the drive."),
        ("output-phase-loss", "Compare the three currents at the first run, and after every work on cable and motor."),
        ("earth-fault", "See that the supply's own protection switches off an earth fault behind the drive."),
        ("underload", "Watch the load in the control system: current or power below a level for a time."),
        ("skip-", "Keep the reference out of the band in the control system; ramps still pass through it."),
        ("dc-braking", "Stop on the ramp; hold the load with a mechanical brake where it must not turn."),
        ("dc-preheat", "Heat the standing motor with an anti-condensation heater that is off while it runs."),
        ("flying-restart", "Wait until the machine stands before a start: a delay in the control system longer than it coasts."),
        ("restart-after-power-loss", "Find out what it does after the supply returns, switched off and on with nobody at the machine; let the control system hold it back."),
        ("automatic-reset", "Let nothing reset trips by itself; a person looks first."),
        ("permitted-direction", "See that nothing can command reverse: no input, no bit from the control system."),
        ("stopping-method", "See at the first run how it stops, and that the machine bears it."),
        ("station-address", "Look for switches in the drive that set it, and see that no other device has the same."),
        ("baud-rate", "Look for switches in the drive that set it, or set the control system to the drive's."),
        ("parity", "Look for switches in the drive that set it, or set the control system to the drive's."),
        ("minimum-frequency", "Keep the reference above it in the control system."),
        ("sleep-", "Let the control system stop and start it."),
        ("wake-", "Let the control system stop and start it."),
        ("process-", "Close the loop in the control system, and send the drive a frequency."),
        ("brake-", "Let the control system work the brake on a signal that torque is there; a hoist wants a drive that does it itself."),
        ("encoder-", "Run it without the encoder, if the machine bears the larger slip and the weaker torque at low speed."),
        ("fixed-", "Send the frequencies from the control system."),
        ("jog-", "Jog from the control system with a low reference."),
        ("bus-", "Watch the link in the control system, and wire a run release that drops when it is lost."),
        ("parameter-lock", "Lock the cabinet, and compare with the sheet at every visit."),
        ("switching-frequency", "Take the drive's own, and see that cable and motor bear it."),
        ("slip-compensation", "Correct the reference by the slip where the speed matters."),
        ("analogue-input", "Scale and limit the signal at its sender."),
        ("analogue-output", "Read it over the bus, or measure beside the drive."),
        ("digital-input", "Do it in the control system."),
        ("relay-", "Read the state over the bus."),
    ];

    /// <summary>The advice for the settings of a line.</summary>
    internal static string Of(IEnumerable<Setting> settings) => string.Join(" ", settings.Select(Of).Distinct(StringComparer.Ordinal));

    private static string Of(Setting setting) =>
        Known.Where(k => setting.Name.StartsWith(k.Begins, StringComparison.Ordinal)).Select(k => k.Advice).FirstOrDefault(Else);
}
