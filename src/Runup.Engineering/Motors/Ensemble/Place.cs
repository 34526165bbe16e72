namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What each of a member's numbers between 0 and 1 decides.</summary>
internal static class Place
{
    internal const int SpeedRounding = 0;
    internal const int CurrentRounding = 1;
    internal const int PowerFactorRounding = 2;
    internal const int Efficiency = 3;
    internal const int SlipTolerance = 4;
    internal const int PowerFactorTolerance = 5;
    internal const int EfficiencyTolerance = 6;
    internal const int CopperShare = 7;
    internal const int CoreShare = 8;
    internal const int StrayShare = 9;
    internal const int Leakage = 10;
    internal const int LeakageSplit = 11;
    internal const int BarDepth = 12;
    internal const int BarCorner = 13;
    internal const int Iron = 14;
    internal const int Warmth = 15;

    internal const int LeakageSaturation = 16;

    /// <summary>How many there are.</summary>
    internal const int Count = 17;
}
