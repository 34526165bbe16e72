namespace Runup.Commissioning.Checks;

/// <summary>The closed list of ids that findings may have; more may be added, none renamed. A check need not exist yet for each.</summary>
public static class FindingIds
{
    /// <summary>An id in words: <c>machine breakaway</c> of <c>machine.breakaway</c>.</summary>
    public static string Words(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id.Replace('.', ' ').Replace('-', ' ');
    }

    /// <summary>All ids, as <c>part.subject</c>.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "plate.power-unit", "plate.base-frequency", "plate.voltage-connection", "plate.poles", "plate.speed", "plate.power-balance", "plate.power-factor",
        "plate.efficiency", "plate.line-phase-current", "plate.kind-of-motor", "plate.service-factor", "plate.starting-figures", "plate.marks",
        "drive.current", "drive.overload", "drive.voltage", "drive.altitude", "drive.ambient", "drive.switching-frequency", "drive.size-by-power",
        "drive.single-phase-input", "drive.panel-heat", "drive.short-circuit-rating", "drive.bus-levels",
        "machine.breakaway", "machine.torque-range", "machine.acceleration", "machine.deceleration", "machine.braking-resistor", "machine.braking-needed",
        "machine.rms-torque", "machine.low-speed-cooling", "machine.overspeed", "machine.critical-speed", "machine.overhauling", "machine.hoist",
        "motor.field-weakening", "motor.87hz", "motor.insulation", "motor.bearing-current", "motor.over-flux", "motor.under-flux", "motor.boost",
        "motor.overload-class", "motor.duty", "motor.inertia", "motor.explosive-atmosphere",
        "supply.voltage", "supply.unbalance", "supply.harmonics", "supply.fault-level", "supply.ride-through", "supply.generator", "supply.conductor",
        "supply.protective-device", "supply.residual-current", "supply.earthing-filter", "supply.regeneration",
        "cable.peak-voltage", "cable.charging-current", "cable.leakage", "cable.voltage-drop", "cable.output-switch", "cable.capacitor", "cable.screen",
        "control.restart", "control.bus-loss", "control.run-source", "control.analogue-scaling", "control.direction", "control.several-motors",
    ];
}
