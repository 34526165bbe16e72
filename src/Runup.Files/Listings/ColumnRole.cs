namespace Runup.Files.Listings;

/// <summary>What a column of a manual's table holds.</summary>
public enum ColumnRole
{
    /// <summary>The parameter's number or index.</summary>
    Number,

    /// <summary>The sub-index of an object.</summary>
    Sub,

    /// <summary>The name.</summary>
    Name,

    /// <summary>Menu or group.</summary>
    Group,

    /// <summary>Range or choices.</summary>
    Range,

    /// <summary>Lowest value.</summary>
    Low,

    /// <summary>Highest value.</summary>
    High,

    /// <summary>Choices.</summary>
    Choices,

    /// <summary>Unit.</summary>
    Unit,

    /// <summary>Display value of one count, or resolution.</summary>
    Scale,

    /// <summary>Factory value.</summary>
    Default,

    /// <summary>When it may be written.</summary>
    Access,

    /// <summary>Whether it may be written while the motor runs.</summary>
    WhileRunning,

    /// <summary>Register address.</summary>
    Register,

    /// <summary>Number type: bits and sign.</summary>
    Type,

    /// <summary>Description or remark.</summary>
    Remark,
}

/// <summary>The names of roles on the command line.</summary>
public static class ColumnRoles
{
    private static readonly string[] Names =
        ["number", "sub", "name", "group", "range", "low", "high", "choices", "unit", "scale", "default", "access", "while-running", "register", "type", "remark"];

    /// <summary>All names, in the order of the roles.</summary>
    public static IReadOnlyList<string> All => Names;

    /// <summary>The role's name.</summary>
    public static string Word(this ColumnRole role) => Names[(int)role];

    /// <summary>The role of a name, or null.</summary>
    public static ColumnRole? Find(string name) => Array.IndexOf(Names, name) is >= 0 and var place ? (ColumnRole)place : null;
}
