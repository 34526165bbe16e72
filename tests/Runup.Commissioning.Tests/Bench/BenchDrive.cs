using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>
/// A drive on the bench: parameters at work and kept, the state machine, ramps and a bus watch in the time that it is given. Its faults are set by hand.
/// </summary>
internal sealed class BenchDrive(TimeProvider time)
{
    private static readonly TimeSpan Tick = TimeSpan.FromMilliseconds(1);

    private readonly DriveProfile profile = BenchMake.Profile;
    private long at = time.GetTimestamp();
    private TimeSpan lastFrame;
    private TimeSpan now;
    private ControlWord word;
    private double reference;
    private double stopHz = double.NaN;
    private bool busLost;

    internal ParameterValues Held { get; set; } = ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size);

    internal ParameterValues Kept { get; set; } = ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size);

    internal PowerState State { get; set; } = PowerState.SwitchOnDisabled;

    internal double Hertz { get; set; }

    internal TripCause Trip { get; set; }

    internal double DcBusV { get; set; } = 561;

    internal string Identity { get; set; } = "Bench B-1 1.0";

    /// <summary>A drive that puts other values in place of those written, by parameter number.</summary>
    internal Dictionary<string, Func<long, long>> Lies { get; } = new(StringComparer.Ordinal);

    internal HashSet<string> RefusesToWrite { get; } = new(StringComparer.Ordinal);

    internal HashSet<string> RefusesToRead { get; } = new(StringComparer.Ordinal);

    internal bool ForgetsAtPowerOff { get; set; }

    internal bool IgnoresStop { get; set; }

    internal bool IgnoresBusLoss { get; set; }

    /// <summary>A drive that takes this much longer than its time-out to notice the loss of the bus.</summary>
    internal TimeSpan NoticesLate { get; set; }

    /// <summary>A drive that a valid frame brings back after the loss of the bus.</summary>
    internal bool FramesReviveIt { get; set; }

    internal TripCause TripsAbove10Hz { get; set; }

    /// <summary>When the drive began by itself to stop, in its own time.</summary>
    internal TimeSpan? BusLossAt { get; private set; }

    internal List<double> FrequenciesRun { get; } = [];

    internal TimeSpan Now => now;

    internal bool FaultResetSeen { get; private set; }

    private string RunSource => SettingsReader.Read(profile, BenchMake.Size, Held).Choice(Setting.RunCommandSource)!;

    /// <summary>Lets its time pass up to now.</summary>
    internal void Pass()
    {
        var passed = time.GetElapsedTime(at);
        at = time.GetTimestamp();
        for (var left = passed; left >= Tick; left -= Tick)
        {
            Step();
        }
    }

    internal void Frame()
    {
        Pass();
        lastFrame = now;
        if (busLost && FramesReviveIt)
        {
            busLost = false;
            State = PowerState.OperationEnabled;
            stopHz = double.NaN;
        }
    }

    internal void TakeWord(ControlWord taken, double hertz)
    {
        FaultResetSeen |= taken.Has(7);
        var was = word;
        word = taken;
        if (RunSource != "bus")
        {
            return;
        }

        var command = PowerMachine.CommandOf(taken);
        if (IgnoresStop && State == PowerState.OperationEnabled && command != PowerCommand.EnableOperation)
        {
            word = was;
            return;
        }

        reference = taken.Has(11) ? -hertz : hertz;
        var before = State;
        State = PowerMachine.OnControlWord(State, was, taken, faultPending: false);
        if (before == PowerState.OperationEnabled && State != before)
        {
            stopHz = Hertz;
        }

        if (State == PowerState.SwitchOnDisabled)
        {
            Hertz = 0;
        }

        if (State == PowerState.OperationEnabled)
        {
            stopHz = double.NaN;
            FrequenciesRun.Add(reference);
        }
    }

    internal void Write(string number, long raw)
    {
        var taken = Lies.TryGetValue(number, out var lie) ? lie(raw) : raw;
        if (number == "131" && taken != Held["131"])
        {
            // The drive states the same output in its new unit.
            var kilowatts = Held["104"]!.Value * (Held["131"] == 1 ? 0.7457 : 1);
            Held = Held.With("104", (long)Math.Round(kilowatts / (taken == 1 ? 0.7457 : 1)));
        }

        Held = profile.Written(BenchMake.Of(number), taken, BenchMake.Size, Held);
    }

    internal void Store() => Kept = ForgetsAtPowerOff ? Kept : Held;

    internal void PowerCycle()
    {
        Pass();
        Held = Kept;
        State = PowerState.SwitchOnDisabled;
        (word, reference, Hertz, Trip) = (default, 0, 0, TripCause.None);
    }

    internal Profiles.DriveReadings Readings() => new()
    {
        OutputFrequency = Quantities.ElectricalFrequency.FromHertz(Math.Round(Math.Abs(Hertz), 2)),
        OutputCurrent = Quantities.LineCurrent.FromAmperes(State == PowerState.OperationEnabled ? 5 : 0),
        DcBus = Quantities.DcVoltage.FromVolts(DcBusV),
        OutputVoltage = Quantities.LineVoltage.FromVolts(Math.Abs(Hertz) * 8),
        Torque = Quantities.Fraction.FromPercent(Hertz),
        Speed = Quantities.ShaftSpeed.FromRpm(Math.Round(Hertz * 30)),
        State = State,
        LastTrip = Trip,
    };

    internal void TripNow(TripCause cause)
    {
        (State, Trip, Hertz) = (PowerState.Fault, cause, 0);
    }

    /// <summary>As if its own control ran it steadily at this frequency.</summary>
    internal void HoldAt(double hertz) => (Hertz, reference, stopHz) = (hertz, hertz, double.NaN);

    internal void ResetAtPanel() => (State, word) = (PowerState.SwitchOnDisabled, default);

    private void Step()
    {
        now += Tick;
        var settings = SettingsOf();
        if (State == PowerState.OperationEnabled && !busLost && settings.TimeOut > TimeSpan.Zero && now - lastFrame >= settings.TimeOut + NoticesLate && !IgnoresBusLoss)
        {
            BusLossAt = now;
            switch (settings.Action)
            {
                case "coast":
                    TripNow(TripCause.BusTimeout);
                    break;
                case "ramp":
                    busLost = true;
                    State = PowerState.QuickStopActive;
                    stopHz = Hertz;
                    break;
            }
        }

        Ramp(settings.UpPerMs, settings.DownPerMs);
        if (TripsAbove10Hz != TripCause.None && Math.Abs(Hertz) > 10)
        {
            TripNow(TripsAbove10Hz);
        }

        if (State == PowerState.QuickStopActive && Hertz == 0)
        {
            State = PowerState.SwitchOnDisabled;
            busLost = false;
        }
    }

    private void Ramp(double up, double down)
    {
        var target = State == PowerState.OperationEnabled && double.IsNaN(stopHz) ? reference : 0;
        if (State is PowerState.Fault)
        {
            return;
        }

        Hertz = Math.Abs(target) >= Math.Abs(Hertz)
            ? (target < Hertz ? Math.Max(target, Hertz - up) : Math.Min(target, Hertz + up))
            : (target < Hertz ? Math.Max(target, Hertz - down) : Math.Min(target, Hertz + down));
        if (target == 0 && Math.Abs(Hertz) < 1e-9)
        {
            Hertz = 0;
        }
    }

    private (TimeSpan TimeOut, string Action, double UpPerMs, double DownPerMs) cached;
    private ParameterValues? cachedFor;

    private (TimeSpan TimeOut, string Action, double UpPerMs, double DownPerMs) SettingsOf()
    {
        if (!ReferenceEquals(cachedFor, Held))
        {
            var read = SettingsReader.Read(profile, BenchMake.Size, Held);
            var top = read.Number(Setting.MaximumFrequency)!.Value;
            cached = (TimeSpan.FromSeconds(read.Number(Setting.BusTimeout)!.Value), read.Choice(Setting.BusLossAction)!,
                top / read.Number(Setting.AccelerationTime)!.Value / 1000, top / read.Number(Setting.DecelerationTime)!.Value / 1000);
            cachedFor = Held;
        }

        return cached;
    }
}
