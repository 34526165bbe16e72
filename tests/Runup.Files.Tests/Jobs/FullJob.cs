using Runup.Files.Jobs;
using Runup.Files.Tests.Photos;

namespace Runup.Files.Tests.Jobs;

/// <summary>A job file in which every key stands.</summary>
internal static class FullJob
{
    internal const string Text = """
        # survey of 3 May, by the panel
        runup: 1                      # format version
        tag: SWP-101
        title: Seawater intake pump 1
        supply:
          voltage: 400 V              # line to line
          frequency: 50 Hz
          phases: 3
          fault-level: 12 MVA
          transformer: {rating: 630 kVA, impedance: 4 %}
          generator: {rating: 200 kVA, subtransient-reactance: 15 %}
          coupling-point: {fault-level: 150 MVA, demand-current: 400 A}
          unbalance: 0.5 %
          earthing: TN-S
          filter: no
          residual-current-device: {rating: 300 mA, type: B}
          line-reactor: 3 %
        motor:
          kind: induction
          count: 1
          plate:
            standard: IEC
            output: {value: 7.5 kW, from: plate, error: 2 %, note: "worn, but legible"}
            voltage: 400 V
            connection: delta
            current: 14.4 A
            frequency: 50 Hz
            speed: 1460 rpm
            poles: 4
            power-factor: 0.83
            efficiency: 90.4 %
            efficiency-class: IE3
            other-ratings: [{voltage: 690 V, connection: star, current: 8.3 A, frequency: 50 Hz, output: 7.5 kW, speed: 1460 rpm}]
            locked-rotor-current: 7.2
            code-letter: J
            design-letter: N
            locked-rotor-torque: 2.3
            breakdown-torque: 2.9
            service-factor: 1.0
            insulation-class: F
            cooling: IC411
            duty: S1
            inverter-duty: yes
          inertia: 0.035 kg·m²
          thermal-sensor: ptc
          brake: no
          measured: {winding-resistance: 0.70 ohm, winding-temperature: 21 °C, no-load-current: 6.4 A, stator-resistance: 0.36 ohm, leakage-inductance: 6.6 mH, magnetizing-current: 6.2 A}
          continuous-torque: fan.csv
          peak-voltage: {voltage: 1600 V, rise-time: 0.1 µs}
        drive:
          profile: tern
          size: "7.5-400"
          region: 60-hz
          overload-cycle: normal
          switching-frequency: 4 kHz
          braking-resistor: {resistance: 70 ohm, continuous-power: 300 W}
          dc-choke: 4 %
          bus-capacitance: 540 µF
          overvoltage-trip: 820 V
          chopper-level: 760 V
          rise-time: 0.1 µs
          current-limit: 20 A
        cable:
          length: 65 m
          section: 6 mm²
          conductor: copper
          screened: yes
          surge-impedance: 80 ohm
          wave-speed: 150 m/µs
          output-device: none
          output-switch: no
        machine:
          load: quadratic
          torque: 42 N·m
          at-speed: 1460 rpm
          curve: pump.csv
          breakaway-torque: 8 N·m
          inertia: 0.12 kg·m²
          gear-ratio: 1
          gear-efficiency: 96 %
          gear-efficiency-back: 94 %
          mass: 500 kg
          drum-diameter: 0.3 m
          largest-speed: 1800 rpm
          critical-speeds: [{speed: 820 rpm, width: 60 rpm}]
        operation:
          minimum-frequency: 20 Hz
          maximum-frequency: 50 Hz
          acceleration: 10 s
          deceleration: 15 s
          directions: forward
          stops-per-hour: 2
          cycle: [{time: 1500 s, speed: 1460 rpm, torque: 42 N·m}, {time: 300 s, speed: 0 rpm, torque: 0 N·m}]
          restart-after-power-loss: no
        control:
          run-from: bus
          run-contact: maintained
          reference-from: bus
          brake-relay: 3
          analogue-1: {signal: 4..20 mA, low: 0 Hz, high: 50 Hz, on-loss: stop}
          analogue-2: {signal: 0-10 V, low: 0 Hz, high: 50 Hz}
          fixed-frequency-1: 35 Hz
          fixed-frequency-2: 30 Hz
          fixed-frequency-3: 25 Hz
          fixed-frequency-4: 20 Hz
          fixed-frequency-5: 15 Hz
          fixed-frequency-6: 10 Hz
          fixed-frequency-7: 5 Hz
          terminals:
            digital-input-1: run-forward
            digital-input-2: enable
            digital-input-3: trip-reset
            digital-input-4: external-trip
            digital-input-5: none
            digital-input-6: none
            relay-1: trip
            relay-2: running
            relay-3: none
            analogue-output-1: output-frequency
            analogue-output-2: output-current
        bus: {kind: modbus-rtu, address: 1, baud: 19200, parity: even, time-out: 0.4 s, on-loss: ramp}
        place:
          ambient: 35 °C
          altitude: 120 m
          explosive-zone: none
        photos: [{file: panel.png, note: door open}]

        """;

    /// <summary>A folder with the curves and the photo that the job names.</summary>
    internal static string Folder(string under)
    {
        File.WriteAllText(Path.Combine(under, "fan.csv"), "frequency_Hz, torque_percent\n5, 55\n25, 85\n50, 100\n");
        File.WriteAllText(Path.Combine(under, "pump.csv"), "speed_rpm;torque_Nm\n0;2,5\n730;10,5\n1460;42\n");
        File.WriteAllBytes(Path.Combine(under, "panel.png"), MadePhotos.Png16(4, 4));
        return under;
    }

    internal static JobReading Read(string text, string? folder = null) => JobFile.ReadText(text, "swp.job.yaml", folder);

    /// <summary>What a person would read of a text that is no job.</summary>
    internal static IReadOnlyList<string> Problems(string text, string? folder = null) => Read(text, folder) switch
    {
        JobReading.Faulty f => [.. f.Problems.Select(p => p.ToString())],
        _ => [],
    };
}
