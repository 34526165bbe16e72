namespace Runup.Profiles;

/// <summary>How the drive is told to keep its parameters through power-off.</summary>
/// <param name="Parameter">Number of the parameter that is written.</param>
/// <param name="Write">The value that is written.</param>
public sealed record StoreProcedure(string Parameter, long Write);
