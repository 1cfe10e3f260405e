using Watersown.Records.Database;

namespace Watersown.Web.SignIn;

/// <summary>
/// Who may ask an endpoint. Every endpoint carries one; where it is missing, nobody may.
/// </summary>
internal sealed class Access
{
    private readonly ImmutableArray<Role> roles;

    private Access(params ImmutableArray<Role> roles) => this.roles = roles;

    /// <summary>Without signing in: what is asked guards itself, or holds nothing of the farm.</summary>
    public static Access Anyone { get; } = new() { NeedsNobody = true };

    /// <summary>Everybody who signs in may read.</summary>
    public static Access Readers { get; } = new(Role.Owner, Role.Family, Role.Crew, Role.Reader);

    /// <summary>Those who put down marks.</summary>
    public static Access Markers { get; } = new(Role.Owner, Role.Family, Role.Crew);

    /// <summary>Those who run the farm.</summary>
    public static Access Farmers { get; } = new(Role.Owner, Role.Family);

    public static Access Owners { get; } = new(Role.Owner);

    public bool NeedsNobody { get; private init; }

    public bool Lets(Role role) => NeedsNobody || roles.Contains(role);
}

/// <summary>Who asks.</summary>
/// <param name="Name">As marks name them.</param>
/// <param name="Role">What they may do.</param>
internal sealed record Caller(string Name, Role Role)
{
    /// <summary>The session's name; none on one's own machine, where nobody signs in.</summary>
    public string? Session { get; init; }

    /// <summary>What the desk's own pages send with what they write; none where no cookie speaks for the caller.</summary>
    public string? Token { get; init; }

    public string Key => Session is null ? "here" : Name;
}
