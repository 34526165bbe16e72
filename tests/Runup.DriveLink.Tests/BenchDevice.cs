using Runup.Commissioning.Tests.Bench;
using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Modbus.Serving;
using Runup.Profiles;

namespace Runup.DriveLink.Tests;

/// <summary>The bench drive behind Modbus registers.</summary>
internal sealed class BenchDevice(BenchDrive drive) : IModbusDevice
{
    private readonly Lock gate = new();
    private readonly Dictionary<int, Parameter> map = BenchMake.Profile.Parameters.ToDictionary(p => (int)p.Register);

    internal Mishap Mishap { get; set; }

    internal List<(string Function, RegisterRange Range)> Requests { get; } = [];

    internal bool SpeaksFunction6 { get; set; } = true;

    /// <summary>How often it says that it is busy before it does what it is asked.</summary>
    internal int BusyTimes { get; set; }

    /// <summary>What it answers in place of doing it, or null.</summary>
    internal ExceptionCode? Answers { get; set; }

    public DeviceIdentification? Identification { get; } = new("Bench", "B-1", "1.0");

    public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
    {
        lock (gate)
        {
            Requests.Add(("read", range));
            if (Before() is { } instead)
            {
                return instead;
            }

            drive.Frame();
            for (var at = (int)range.Start.Value; at <= range.Last.Value;)
            {
                if (!map.TryGetValue(at, out var parameter) || at + parameter.RegisterCount - 1 > range.Last.Value || drive.RefusesToRead.Contains(parameter.Number))
                {
                    return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
                }

                RegisterImage.Words(parameter, Raw(parameter)).CopyTo(values[(at - range.Start.Value)..]);
                at += parameter.RegisterCount;
            }

            return After();
        }
    }

    public DeviceAnswer WriteRegister(RegisterAddress address, ushort value)
    {
        lock (gate)
        {
            Requests.Add(("6", new RegisterRange(address, 1)));
            return SpeaksFunction6 ? Write(address.Value, [value]) : DeviceAnswer.Refused(ExceptionCode.IllegalFunction);
        }
    }

    public DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values)
    {
        lock (gate)
        {
            Requests.Add(("16", range));
            return Write(range.Start.Value, values);
        }
    }

    private DeviceAnswer Write(int first, ReadOnlySpan<ushort> words)
    {
        if (Before() is { } instead)
        {
            return instead;
        }

        drive.Frame();
        if (first == 1000)
        {
            drive.TakeWord(new ControlWord(words[0]), words.Length > 1 ? words[1] / 100.0 : 0);
            return After();
        }

        if (!map.TryGetValue(first, out var parameter) || parameter.RegisterCount != words.Length)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        var raw = RegisterImage.Raw(parameter, words);
        if (drive.RefusesToWrite.Contains(parameter.Number) || !parameter.Accepts(raw, BenchMake.Size))
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataValue);
        }

        if (parameter.Access == ParameterAccess.Action)
        {
            drive.Store();
        }
        else
        {
            drive.Write(parameter.Number, raw);
        }

        return After();
    }

    private DeviceAnswer? Before()
    {
        if (Answers is { } code)
        {
            return DeviceAnswer.Refused(code);
        }

        if (BusyTimes > 0)
        {
            BusyTimes--;
            return DeviceAnswer.Refused(ExceptionCode.ServerDeviceBusy);
        }

        return Mishap == Mishap.RequestLost ? DeviceAnswer.Silent : null;
    }

    private DeviceAnswer After() => Mishap == Mishap.ReplyLost ? DeviceAnswer.Silent : DeviceAnswer.Done;

    private long Raw(Parameter parameter) => parameter.Number == "1002"
        ? StatusWord.Of(drive.State, voltageEnabled: true, warning: false, remote: true, targetReached: false, internalLimit: false).Bits
        : ReadingCodec.Encode(BenchMake.Profile, drive.Held, drive.Readings()).Where(r => r.Parameter == parameter).Select(r => (long?)r.Raw).FirstOrDefault()
            ?? drive.Held[parameter.Number] ?? 0;
}
