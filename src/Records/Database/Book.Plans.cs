using System.Data.Common;
using System.Text;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>A plan as it was issued; never changed afterwards.</summary>
/// <param name="Number">The number that people are told.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Who">By whom.</param>
/// <param name="Why">What made it necessary.</param>
/// <param name="FarmVersion">The farm document that it starts from.</param>
/// <param name="MarksUpto">Number of the last mark that was known to it.</param>
/// <param name="Document">The plan, UTF-8 JSON.</param>
public sealed record IssuedPlan(long Number, DateTimeOffset Made, string Who, string Why, long FarmVersion, long MarksUpto, ReadOnlyMemory<byte> Document);

/// <summary>An issued plan without its document, for a list.</summary>
public sealed record PlanLine(long Number, DateTimeOffset Made, string Who, string Why, long FarmVersion, long MarksUpto);

public sealed partial class Book
{
    private const string PlanColumns = "SELECT number, made, who, why, farm_version, marks_upto, document FROM plans ";

    /// <summary>Keeps a plan under its number, which must be the next one; the same plan sent twice is one plan.</summary>
    public Task<Outcome<IssuedPlan>> SavePlanAsync(IssuedPlan plan, CancellationToken stop = default) => WriteAsync(connection => SavePlanAsync(connection, plan), stop);

    /// <summary>The number that the next plan will carry. A farm that numbered plans before it had a book goes on from there.</summary>
    /// <param name="first">The number to begin with in a book without plans.</param>
    /// <param name="stop">Gives up.</param>
    public Task<long> NextPlanNumberAsync(long first = 1, CancellationToken stop = default) => ReadAsync(connection => NextPlanNumberAsync(connection, first), stop);

    public Task<IssuedPlan?> PlanAsync(long number, CancellationToken stop = default) => ReadAsync(connection => PlanAsync(connection, number), stop);

    public Task<IssuedPlan?> LatestPlanAsync(CancellationToken stop = default) => ReadAsync(LatestPlanAsync, stop);

    /// <summary>All plans, newest first, without their documents.</summary>
    public Task<ImmutableArray<PlanLine>> PlansAsync(CancellationToken stop = default) => ReadAsync<ImmutableArray<PlanLine>>(async connection =>
        [.. await connection.QueryAsync<PlanLine>("SELECT number, made, who, why, farm_version, marks_upto FROM plans ORDER BY number DESC")], stop);

    internal static async Task<IssuedPlan?> LatestPlanAsync(DbConnection connection) =>
        (await connection.QueryFirstOrDefaultAsync<PlanRow>(PlanColumns + "ORDER BY number DESC LIMIT 1"))?.Read();

    internal static async Task<IssuedPlan?> PlanAsync(DbConnection connection, long number) =>
        (await connection.QuerySingleOrDefaultAsync<PlanRow>(PlanColumns + "WHERE number = @number", new { number }))?.Read();

    /// <summary>All plans, oldest first.</summary>
    internal static async Task<ImmutableArray<PlanLine>> PlanLinesAsync(DbConnection connection) =>
        [.. await connection.QueryAsync<PlanLine>("SELECT number, made, who, why, farm_version, marks_upto FROM plans ORDER BY number")];

    internal static async Task<Outcome<IssuedPlan>> SavePlanAsync(DbConnection connection, IssuedPlan plan)
    {
        var sha256 = CanonicalJson.Digest(plan.Document.Span);
        var there = await connection.QuerySingleOrDefaultAsync<string>("SELECT sha256 FROM plans WHERE number = @Number", new { plan.Number });
        if (there == sha256) return Outcome<IssuedPlan>.Of(plan);
        var next = await NextPlanNumberAsync(connection, plan.Number);
        if (plan.Number != next) return Outcome<IssuedPlan>.Refuse(BookProblems.PlanNumberTaken.At("plan", ("value", Plain(plan.Number)), ("limit", Plain(next))));
        if (await connection.ExecuteScalarAsync<long>("SELECT COUNT(*) FROM farms WHERE version = @FarmVersion", new { plan.FarmVersion }) == 0)
            return Outcome<IssuedPlan>.Refuse(BookProblems.NoSuchFarmVersion.At("plan", ("value", Plain(plan.FarmVersion))));
        await InsertPlanAsync(connection, plan, sha256);
        return Outcome<IssuedPlan>.Of(plan);
    }

    internal static Task InsertPlanAsync(DbConnection connection, IssuedPlan plan, string sha256) => connection.ExecuteAsync(
        "INSERT INTO plans (number, made, who, why, farm_version, marks_upto, program, sha256, document) "
        + "VALUES (@Number, @Made, @Who, @Why, @FarmVersion, @MarksUpto, @Program, @sha256, @document)",
        new { plan.Number, plan.Made, plan.Who, plan.Why, plan.FarmVersion, plan.MarksUpto, Program, sha256, document = Encoding.UTF8.GetString(plan.Document.Span) });

    private static async Task<long> NextPlanNumberAsync(DbConnection connection, long first) =>
        await connection.ExecuteScalarAsync<long?>("SELECT MAX(number) FROM plans") is { } last ? last + 1 : first;

    private sealed record PlanRow(long Number, DateTimeOffset Made, string Who, string Why, long FarmVersion, long MarksUpto, string Document)
    {
        public IssuedPlan Read() => new(Number, Made, Who, Why, FarmVersion, MarksUpto, Encoding.UTF8.GetBytes(Document));
    }
}
