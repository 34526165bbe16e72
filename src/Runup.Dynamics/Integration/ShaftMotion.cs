using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>Integrates between the events at which a shaft comes to rest, breaks away or turns.</summary>
/// <remarks>
/// Friction that changes its sign with the speed makes the equations break at zero speed. So each piece of time is integrated with the
/// friction of one direction, and the moments at which the shaft comes to rest or breaks away are located, not stepped over. All members take
/// the step together; one that meets an event takes it again by itself, its neighbours' lanes going along unused.
/// </remarks>
internal static class ShaftMotion
{
    // More turns of motion than this within one step are the chatter of rounding: the shaft then rests until the next step.
    private const int MostEventsInStep = 6;

    /// <summary>Advances the states by a length of time with a method of integration.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Advance<TStepper, TRates, T>(in TStepper stepper, ref TRates rates, ref SixStates<T> states, double lengthS)
        where TStepper : IStepper<T>
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        var before = states;
        stepper.Step(ref rates, ref states, T.Of(lengthS));
        var ended = Ended<TRates, T>(ref rates, states);
        if (T.Any(ended))
        {
            Repeat<TStepper, TRates, T>(stepper, ref rates, before, ref states, T.And(ended, states.Finite), lengthS);
        }
    }

    /// <summary>The same for some members alone; what the others' states then are has no meaning, and their shafts go on as they did.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AdvanceSome<TStepper, TRates, T>(in TStepper stepper, ref TRates rates, ref SixStates<T> states, double lengthS, T some)
        where TStepper : IStepper<T>
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        var before = states;
        stepper.Step(ref rates, ref states, T.Of(lengthS));
        var ended = T.And(some, Ended<TRates, T>(ref rates, states));
        if (T.Any(ended))
        {
            Repeat<TStepper, TRates, T>(stepper, ref rates, before, ref states, T.And(ended, states.Finite), lengthS);
        }
    }

    /// <summary>Set where a shaft has come to rest, turned or broken away since the states were integrated with its motion as it is.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Ended<TRates, T>(ref TRates rates, in SixStates<T> states)
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T> => T.Less(Distance<TRates, T>(ref rates, states), default);

    // Apart, so that the step that meets no event keeps its registers.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Repeat<TStepper, TRates, T>(in TStepper stepper, ref TRates rates, in SixStates<T> before, ref SixStates<T> states, T ended, double lengthS)
        where TStepper : IStepper<T>
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        for (var lane = 0; lane < T.Count; lane++)
        {
            if (ended.IsSet(lane))
            {
                var alone = before;
                AdvanceAlone<TStepper, TRates, T>(stepper, ref rates, ref alone, lengthS, lane);
                states.Put(lane, alone);
            }
        }
    }

    private static void AdvanceAlone<TStepper, TRates, T>(in TStepper stepper, ref TRates rates, ref SixStates<T> states, double lengthS, int lane)
        where TStepper : IStepper<T>
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        var leftS = lengthS;
        for (var events = 0; leftS > 0; events++)
        {
            var before = states;
            if (events >= MostEventsInStep)
            {
                var direction = (int)rates.Direction[lane];
                rates.Move(lane, 0);
                states.X5 = states.X5.With(lane, 0);
                stepper.Step(ref rates, ref states, T.Of(leftS));
                rates.Move(lane, direction);
                return;
            }

            stepper.Step(ref rates, ref states, T.Of(leftS));
            var end = Distance<TRates, T>(ref rates, states)[lane];
            if (!double.IsFinite(end) || end >= 0)
            {
                return;
            }

            leftS -= Locate<TStepper, TRates, T>(stepper, ref rates, before, ref states, leftS, lane);
            ChangeMotion<TRates, T>(ref rates, ref states, lane);
        }
    }

    // Distance to the event, positive before it: speed in the direction of motion, or what is left until the shaft breaks away.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Distance<TRates, T>(ref TRates rates, in SixStates<T> states)
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        var moving = rates.Direction * states.X5;
        var held = T.Less(T.Abs(rates.Direction), T.Of(0.5));
        return T.Any(held) ? DistanceHeld<TRates, T>(ref rates, states, held, moving) : moving;
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private static T DistanceHeld<TRates, T>(ref TRates rates, in SixStates<T> states, T held, T moving)
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        var driving = rates.DrivingTorqueNm(states);
        return T.Choose(held, T.Min(driving - rates.HoldLowestNm, rates.HoldHighestNm - driving), moving);
    }

    // Bracketed false position (Illinois) on the length of the step; each trial is integrated anew from the same states.
    private static double Locate<TStepper, TRates, T>(in TStepper stepper, ref TRates rates, in SixStates<T> before, ref SixStates<T> states, double lengthS, int lane)
        where TStepper : IStepper<T>
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        double lowS = 0, highS = lengthS;
        double atLow = Math.Max(Distance<TRates, T>(ref rates, before)[lane], 0), atHigh = Distance<TRates, T>(ref rates, states)[lane];
        var tolerance = 1e-9 * Math.Max(atLow, -atHigh);
        var kept = 0;
        for (var i = 0; i < 40 && highS - lowS > 1e-12 && atLow > 0; i++)
        {
            var tryS = lowS + ((highS - lowS) * atLow / (atLow - atHigh));
            var trial = before;
            stepper.Step(ref rates, ref trial, T.Of(tryS));
            var at = Distance<TRates, T>(ref rates, trial)[lane];
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
            stepper.Step(ref rates, ref states, T.Of(lowS));
        }

        return lowS;
    }

    private static void ChangeMotion<TRates, T>(ref TRates rates, ref SixStates<T> states, int lane)
        where TRates : struct, IShaftRates<T>
        where T : struct, ILanes<T>
    {
        states.X5 = states.X5.With(lane, 0);
        var driving = rates.DrivingTorqueNm(states)[lane];
        double lowest = rates.HoldLowestNm[lane], highest = rates.HoldHighestNm[lane];
        var holds = (int)rates.Direction[lane] != 0 && driving >= lowest && driving <= highest;
        rates.Move(lane, holds ? 0 : driving >= 0.5 * (lowest + highest) ? 1 : -1);
    }
}
