using FsCheck.Xunit;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests;

public sealed class AnyOrdersTests
{
    /// <summary>Whatever a drive is told, in whatever order: its numbers stay numbers, and a tripped drive gives no current.</summary>
    [Property(MaxTest = 60)]
    public bool Whatever_a_drive_is_told_its_readings_stay_sane((byte What, byte Size, byte Length)[] commands)
    {
        var settings = ByPlate with
        {
            ReversePermitted = true,
            MaximumFrequency = ElectricalFrequency.FromHertz(100),
            Acceleration = Seconds(2),
            Deceleration = Seconds(2),
        };
        var drive = new DriveSimulation(PumpSet, settings);
        return commands.All(command =>
        {
            Tell(drive, command.What % 10, command.Size);
            for (var i = 0; i <= command.Length; i++)
            {
                drive.Tick();
                if (!Sane(drive.Readings))
                {
                    return false;
                }
            }

            return true;
        });
    }

    private static void Tell(DriveSimulation drive, int what, byte size)
    {
        switch (what)
        {
            case 0 or 1 or 2:
                drive.Order = Forward(size - 128);
                break;
            case 3:
                drive.Order = Stop();
                break;
            case 4:
                drive.Order = Stop(StopKind.Coast);
                break;
            case 5:
                drive.Order = Stop(StopKind.QuickStop);
                break;
            case 6:
                drive.PowerOff();
                break;
            case 7:
                drive.PowerOn();
                break;
            case 8:
                drive.Trip((TripCause)(size % 19));
                break;
            default:
                drive.ResetTrip();
                break;
        }
    }

    private static bool Sane(in DriveReadings at) =>
        double.IsFinite(at.OutputCurrentA + at.TorqueNm + at.SpeedRpm + at.OutputVoltageV + at.MotorThermalPercent)
        && at.DcBusV is >= 0 and < 900
        && at.OutputCurrentA < 100
        && Math.Abs(at.SpeedRpm) < 3500
        && (at.State is DriveState.Running or DriveState.Stopping or DriveState.QuickStopping || at.OutputCurrentA == 0)
        && (at.State == DriveState.Tripped) == (at.Trip != TripCause.None);
}
