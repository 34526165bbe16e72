namespace Runup.Dynamics.Integration;

/// <summary>Whether friction holds the shaft, and else which way it moves; integrates between the events at which that changes.</summary>
/// <remarks>
/// Friction that changes its sign with the speed makes the equations break at zero speed. So each piece of time is integrated with the
/// friction of one direction, and the moments at which the shaft comes to rest or breaks away are located, not stepped over.
/// </remarks>
internal struct ShaftMotion
{
    // More turns of motion than this within one step are the chatter of rounding: the shaft then rests until the next step.
    private const int MostEventsInStep = 6;

    private int direction;

    /// <summary>True while friction holds the shaft.</summary>
    internal readonly bool Held => direction == 0;

    internal static ShaftMotion AtRest => default;

    internal static ShaftMotion Moving(double speed) => new() { direction = Math.Sign(speed) };

    /// <summary>Advances the states by a length of time with a method of integration.</summary>
    internal void Advance<TStepper, TRates>(in TStepper stepper, ref TRates rates, ref SixStates states, double lengthS)
        where TStepper : IStepper
        where TRates : struct, IShaftRates
    {
        var leftS = lengthS;
        for (var events = 0; leftS > 0; events++)
        {
            Choose(ref rates, ref states, rest: events >= MostEventsInStep);
            var before = states;
            stepper.Step(rates, ref states, leftS);
            if (events >= MostEventsInStep || !states.IsFinite || !Ended(rates, states))
            {
                return;
            }

            leftS -= Locate(stepper, rates, before, ref states, leftS);
            ChangeMotion(rates, ref states);
        }
    }

    private readonly void Choose<TRates>(ref TRates rates, ref SixStates states, bool rest)
        where TRates : struct, IShaftRates
    {
        if (Held || rest)
        {
            states.X5 = 0;
            rates.Hold();
        }
        else
        {
            rates.Release(direction);
        }
    }

    // Distance to the event, positive before it: speed in the direction of motion, or what is left until the shaft breaks away.
    private readonly double Distance<TRates>(in TRates rates, in SixStates states)
        where TRates : struct, IShaftRates
    {
        if (!Held)
        {
            return direction * states.X5;
        }

        var driving = rates.DrivingTorqueNm(states);
        return Math.Min(driving - rates.HoldLowestNm, rates.HoldHighestNm - driving);
    }

    private readonly bool Ended<TRates>(in TRates rates, in SixStates states)
        where TRates : struct, IShaftRates => Distance(rates, states) < 0;

    // Bracketed false position (Illinois) on the length of the step; each trial is integrated anew from the same states.
    private readonly double Locate<TStepper, TRates>(in TStepper stepper, in TRates rates, in SixStates before, ref SixStates states, double lengthS)
        where TStepper : IStepper
        where TRates : struct, IShaftRates
    {
        double lowS = 0, highS = lengthS;
        double atLow = Math.Max(Distance(rates, before), 0), atHigh = Distance(rates, states);
        var tolerance = 1e-9 * Math.Max(atLow, -atHigh);
        var kept = 0;
        for (var i = 0; i < 40 && highS - lowS > 1e-12 && atLow > 0; i++)
        {
            var tryS = lowS + ((highS - lowS) * atLow / (atLow - atHigh));
            var trial = before;
            stepper.Step(rates, ref trial, tryS);
            var at = Distance(rates, trial);
            if (Math.Abs(at) <= tolerance)
            {
                states = trial;
                return tryS;
            }

            if (at > 0)
            {
                lowS = tryS;
                atLow = at;
                atHigh *= kept == 1 ? 0.5 : 1;
                kept = 1;
            }
            else
            {
                highS = tryS;
                atHigh = at;
                atLow *= kept == -1 ? 0.5 : 1;
                kept = -1;
            }
        }

        states = before;
        if (lowS > 0)
        {
            stepper.Step(rates, ref states, lowS);
        }

        return lowS;
    }

    private void ChangeMotion<TRates>(in TRates rates, ref SixStates states)
        where TRates : struct, IShaftRates
    {
        states.X5 = 0;
        var driving = rates.DrivingTorqueNm(states);
        var middle = 0.5 * (rates.HoldLowestNm + rates.HoldHighestNm);
        var holds = !Held && driving >= rates.HoldLowestNm && driving <= rates.HoldHighestNm;
        direction = holds ? 0 : driving >= middle ? 1 : -1;
    }
}
