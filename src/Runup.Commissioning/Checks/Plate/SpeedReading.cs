namespace Runup.Commissioning.Checks.Plate;

/// <summary>How a plate's frequency, speed and poles go together.</summary>
internal abstract record SpeedReading
{
    private SpeedReading()
    {
    }

    /// <summary>The poles that other checks reckon with; null where none can be told.</summary>
    internal virtual int? Poles => null;

    /// <summary>The slip at full load where frequency, speed and poles go together; else 0.</summary>
    internal virtual double FullLoadSlip => 0;

    /// <summary>Figures that no motor has, or not an induction motor.</summary>
    internal sealed record Unusable : SpeedReading;

    /// <summary>They go together.</summary>
    internal sealed record Fits(int PoleCount, double Slip) : SpeedReading
    {
        internal override int? Poles => PoleCount;

        internal override double FullLoadSlip => Slip;
    }

    /// <summary>No machine has that number of poles.</summary>
    internal sealed record NoSuchPoles(int Printed, int? Fitting) : SpeedReading
    {
        internal override int? Poles => Fitting;
    }

    /// <summary>The speed is that of another number of poles.</summary>
    internal sealed record WrongPoles(int Printed, int Fitting, double SlipAsPrinted, double Slip) : SpeedReading
    {
        internal override int? Poles => Fitting;
    }

    /// <summary>The speed is that of another frequency; with other poles too where <see cref="PolesToo"/>.</summary>
    internal sealed record WrongFrequency(double Other_Hz, int PoleCount, double SlipAsPrinted, double Slip, bool PolesToo) : SpeedReading
    {
        internal override int? Poles => PoleCount;
    }

    /// <summary>The speed printed is that of the field.</summary>
    internal sealed record Synchronous(int PoleCount) : SpeedReading
    {
        internal override int? Poles => PoleCount;
    }

    /// <summary>Nothing cures it: above synchronous speed, or far below.</summary>
    internal sealed record Impossible(int PoleCount, double Slip, double? PerhapsMeant_rpm) : SpeedReading
    {
        internal override int? Poles => PerhapsMeant_rpm is null ? null : PoleCount;
    }

    /// <summary>More slip than usual, less than impossible.</summary>
    internal sealed record HighSlip(int PoleCount, double Slip, double Usual) : SpeedReading
    {
        internal override int? Poles => PoleCount;

        internal override double FullLoadSlip => Slip;
    }

    internal static SpeedReading Of(PlateContext context) =>
        context.IsInduction && context.Figures.AreUsable ? new Reader(context).Read() : new Unusable();

    /// <summary>Reads one plate.</summary>
    private sealed class Reader(PlateContext context)
    {
        // Large cage motors run at 0.4 % slip; what is nearer to the field than this is the field's own speed.
        private const double SmallestSlip = 0.002;
        private const double HighestOfHighSlipDesigns = 0.25;
        private const int MostUsualPoles = 16;
        private const int MostCommonPoles = 8;

        private readonly PlateFigures figures = context.Figures;

        private readonly double limit = string.Equals(context.Plate.DesignLetter?.Value, "D", StringComparison.OrdinalIgnoreCase)
            ? HighestOfHighSlipDesigns
            : UsualMotors.HighestSlip(context.Figures.Output_W);

        internal SpeedReading Read()
        {
            var frequency = figures.Frequency_Hz;
            var fromSpeed = figures.PolesFromSpeed(frequency);
            if (figures.PrintedPoles is { } printed && figures.BuildablePoles is null)
            {
                return new NoSuchPoles(printed, IsPlausible(frequency, fromSpeed) ? fromSpeed : null);
            }

            var poles = figures.BuildablePoles ?? fromSpeed;
            var slip = figures.SlipAt(frequency, poles);
            if (IsPlausible(frequency, poles, figures.BuildablePoles is null ? MostUsualPoles : int.MaxValue))
            {
                return new Fits(poles, slip);
            }

            if (Math.Abs(figures.SlipAt(frequency, fromSpeed)) < SmallestSlip && fromSpeed <= MostUsualPoles)
            {
                return new Synchronous(fromSpeed);
            }

            return Alternative(slip) ?? Hopeless(poles, slip);
        }

        private SpeedReading? Alternative(double slip)
        {
            var fromSpeed = figures.PolesFromSpeed(figures.Frequency_Hz);
            var otherPoles = figures.BuildablePoles is { } printed && printed != fromSpeed && IsPlausible(figures.Frequency_Hz, fromSpeed)
                ? new WrongPoles(printed, fromSpeed, slip, figures.SlipAt(figures.Frequency_Hz, fromSpeed))
                : null;
            var otherFrequency = OtherFrequency() is { } other ? AtFrequency(other, slip) : null;
            return (otherPoles, otherFrequency) switch
            {
                (null, _) => otherFrequency,
                (_, null) => otherPoles,
                (_, { PolesToo: true }) => otherPoles,
                _ => otherPoles.Fitting > MostCommonPoles || SupplyIs(otherFrequency.Other_Hz) ? otherFrequency : otherPoles,
            };
        }

        private WrongFrequency? AtFrequency(double other, double slip)
        {
            if (figures.BuildablePoles is { } printed && IsPlausible(other, printed))
            {
                return new(other, printed, slip, figures.SlipAt(other, printed), false);
            }

            // Two slips of the pen at once are believed only where one reading is out of the question.
            var poles = figures.PolesFromSpeed(other);
            var outOfTheQuestion = slip is < SmallestSlip or > HighestOfHighSlipDesigns;
            return IsPlausible(other, poles) && (figures.BuildablePoles is null || outOfTheQuestion) ? new(other, poles, slip, figures.SlipAt(other, poles), figures.BuildablePoles is not null) : null;
        }

        private SpeedReading Hopeless(int poles, double slip)
        {
            foreach (var factor in (ReadOnlySpan<double>)[10, 0.1])
            {
                var meant = figures with { Speed_rpm = figures.Speed_rpm * factor };
                var meantPoles = meant.BuildablePoles ?? meant.PolesFromSpeed(figures.Frequency_Hz);
                var meantSlip = meant.SlipAt(figures.Frequency_Hz, meantPoles);
                if (meantPoles <= MostUsualPoles && meantSlip >= SmallestSlip && meantSlip <= limit)
                {
                    return new Impossible(meantPoles, slip, meant.Speed_rpm);
                }
            }

            return slip >= SmallestSlip && slip <= HighestOfHighSlipDesigns ? new HighSlip(poles, slip, limit) : new Impossible(poles, slip, null);
        }

        private bool IsPlausible(double frequency, int poles, int most = MostUsualPoles)
        {
            var slip = figures.SlipAt(frequency, poles);
            return poles <= most && slip >= SmallestSlip && slip <= limit;
        }

        private double? OtherFrequency() => figures.Frequency_Hz switch
        {
            > 49 and < 51 => 60,
            > 59 and < 61 => 50,
            _ => null,
        };

        private bool SupplyIs(double frequency) =>
            context.Supply is { } supply && Math.Abs((supply.Frequency.Value.Hertz / frequency) - 1) < 0.02;
    }
}
