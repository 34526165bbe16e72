using System.Runtime.CompilerServices;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <content>The chopper: when it switches, and the steps between.</content>
internal sealed partial class DrivePlant<T>
{
    // More of them are the chatter of a resistor too small, and left to the short steps.
    private const int MostPiecesInStep = 8;

    // A chopper's swing is followed in pieces, each member by its own lengths: to the moment at which its bus crosses the level, and no longer than a quarter of the step while the bus is up.
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private T StepWithChopper(T stepS)
    {
        T rough = default, leftS = stepS;
        for (var pieces = 0; T.Any(T.Less(default, leftS)); pieces++)
        {
            if (pieces == MostPiecesInStep)
            {
                return T.Or(rough, T.Less(default, leftS));
            }

            var begun = states;
            reading.ChopperOn = T.Or(reading.ChopperOn, T.And(chopperOn, T.Less(default, leftS)));
            var lengthS = T.Choose(T.Less(T.Of(figures.Rectifier.PeakV), states.X6), T.Min(leftS, 0.25 * stepS), leftS);

            // Nothing is kept from piece to piece: how many there are is the neighbours' affair too.
            var piece = ExponentialRungeKutta4<T>.For(rates.Bus.SettlingPerS(states.X6), lengthS);
            piece.Step(ref rates, ref states);
            rough = T.Or(rough, Rough(begun.X6, states, piece.Roughness));
            var crosses = T.And(ChopperWouldSwitch(), T.Not(rough));
            var resistorNowS = resistorS;
            if (T.Any(crosses))
            {
                lengthS = T.Choose(crosses, StepToLevel(begun, lengthS, piece.SlopePerS, crosses), lengthS);
                chopperOn = T.Choose(crosses, T.Not(chopperOn), chopperOn);
                LoadBus();
            }

            reading.ResistorJ += (0.5 * (lengthS * resistorNowS)) * ((begun.X6 * begun.X6) + (states.X6 * states.X6));
            reading.LargestBusV = T.Max(reading.LargestBusV, states.X6);
            leftS -= lengthS;
        }

        return rough;
    }

    // The bus is all but straight: the parabola through begin, slope at begin and end tells when it crosses, and a secant from there takes up what is left.
    private T StepToLevel(in SixStates<T> begun, T lengthS, T slope, T crosses)
    {
        var levelV = T.Choose(chopperOn, T.Of(figures.ChopperOffV), T.Of(figures.ChopperOnV));
        var mean = (states.X6 - begun.X6) / lengthS;
        var bend = (mean - slope) / lengthS;
        var untilS = (levelV - begun.X6) / mean;
        untilS = (levelV - begun.X6) / (slope + (untilS * bend));
        untilS = (levelV - begun.X6) / (slope + (untilS * bend));
        for (var trial = 0; ; trial++)
        {
            untilS = T.Choose(crosses, LaneSet.Clamp(untilS, default, lengthS), default);
            var alone = begun;
            ExponentialRungeKutta4<T>.For(rates.Bus.SettlingPerS(begun.X6), untilS).Step(ref rates, ref alone);
            if (trial == 1)
            {
                states = SixStates<T>.Choose(crosses, alone, states);
                return untilS;
            }

            untilS += (levelV - alone.X6) / (slope + (2.0 * (untilS * bend)));
        }
    }

    // The bus is all but straight within a short step: where it crosses the level the chopper switches, and the rest of the step goes on from there.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void SwitchChopperWithin(double stepS, in SixStates<T> begun, T switches)
    {
        for (var lane = 0; lane < T.Count; lane++)
        {
            if (switches.IsSet(lane))
            {
                var own = LaneSet.Mask<T>(1u << lane);
                var wasOn = chopperOn.IsSet(lane);
                var levelV = wasOn ? figures.ChopperOffV : figures.ChopperOnV;
                double beginV = begun.X6[lane], endV = states.X6[lane];
                var untilS = stepS * Math.Clamp((levelV - beginV) / (endV - beginV), 0, 1);
                var alone = begun;
                ShaftMotion.AdvanceSome<RungeKutta4<T>, DriveRates<T>, T>(default, ref rates, ref alone, untilS, own);

                // A second secant takes up what bend there is.
                untilS = Math.Clamp(untilS * (levelV - beginV) / (alone.X6[lane] - beginV), 0, stepS);
                alone = begun;
                ShaftMotion.AdvanceSome<RungeKutta4<T>, DriveRates<T>, T>(default, ref rates, ref alone, untilS, own);
                rates.Bus.ConductanceS = rates.Bus.ConductanceS.With(lane, figures.OwnConductance + (wasOn ? 0 : figures.ResistorConductance));
                ShaftMotion.AdvanceSome<RungeKutta4<T>, DriveRates<T>, T>(default, ref rates, ref alone, stepS - untilS, own);
                states.Put(lane, alone);
                var (onS, otherV) = wasOn ? (untilS, beginV) : (stepS - untilS, alone.X6[lane]);
                var tookJ = 0.5 * onS * figures.ResistorConductance * ((levelV * levelV) + (otherV * otherV));
                reading.ResistorJ = reading.ResistorJ.With(lane, reading.ResistorJ[lane] + tookJ);
                reading.LargestBusV = reading.LargestBusV.With(lane, Math.Max(reading.LargestBusV[lane], levelV));
            }
        }

        chopperOn = T.Choose(switches, T.Not(chopperOn), chopperOn);
        reading.ChopperOn = T.Or(reading.ChopperOn, T.And(switches, chopperOn));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void SwitchChopper(bool enabled, T some)
    {
        if (enabled)
        {
            var level = T.Choose(chopperOn, T.Of(figures.ChopperOffV), T.Of(figures.ChopperOnV));
            chopperOn = T.Choose(some, T.Not(T.Less(states.X6, level)), chopperOn);
        }
        else
        {
            chopperOn = default;
        }

        LoadBus();
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void LoadBus()
    {
        resistorS = T.Choose(chopperOn, T.Of(figures.ResistorConductance), default);
        rates.Bus.ConductanceS = T.Of(figures.OwnConductance) + resistorS;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T ChopperWouldSwitch() =>
        T.Choose(chopperOn, T.Less(states.X6, T.Of(figures.ChopperOffV)), T.Not(T.Less(states.X6, T.Of(figures.ChopperOnV))));
}
