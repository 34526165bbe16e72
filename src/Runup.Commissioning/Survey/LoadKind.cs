namespace Runup.Commissioning.Survey;

/// <summary>Shapes of load torque that a job names.</summary>
public enum LoadKind
{
    /// <summary>The same torque at every speed.</summary>
    Constant,

    /// <summary>Proportional to speed.</summary>
    Linear,

    /// <summary>With the square of speed.</summary>
    Quadratic,

    /// <summary>Inverse to speed.</summary>
    ConstantPower,

    /// <summary>A lifted mass.</summary>
    Hoisting,

    /// <summary>From a table.</summary>
    Table,
}
