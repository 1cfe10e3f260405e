using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Threading.Channels;
using Watersown.Documents.Logbooks;
using Watersown.Documents.Plan;
using Watersown.Records.Database;
using Watersown.Records.Schedule;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Web.Season;

namespace Watersown.Web.Schedule;

/// <summary>How far the plan that is being worked out has come.</summary>
/// <param name="Running">One is being worked out.</param>
/// <param name="Why">What made it necessary.</param>
/// <param name="Latest">What the search last said.</param>
/// <param name="Failed">Number under which the log tells why the last one failed; none where it did not.</param>
internal sealed record PlanningView(bool Running, string Why, PlanProgress? Latest, string? Failed);

/// <summary>
/// Plans in the background: at once when asked, after a quiet moment when marks or the farm changed. A plan is kept and
/// numbered when something in it differs from the one before; one asked for by a person always is.
/// </summary>
internal sealed partial class PlanRunner(Book book, LiveSeason season, DeskOptions options, TimeProvider time, ILogger<PlanRunner> log) : BackgroundService
{
    private static readonly TimeSpan waitMost = TimeSpan.FromSeconds(15);

    /// <summary>What is put down without any plan being the worse for it.</summary>
    private static readonly ImmutableHashSet<Type> Beside = [typeof(Noted), typeof(Photographed), typeof(Told), typeof(PlanIssued), typeof(Scouted), typeof(RingsCounted), typeof(StageSeen), typeof(PestLooked), typeof(NitrogenOn), typeof(NutrientRead), typeof(TopdressDecided), typeof(StandResponseSet), typeof(StageTargetsSet), typeof(FloodWarmth), typeof(WeatherTaken), typeof(NormalsTaken), typeof(Overridden), typeof(LoadGone), typeof(UnknownFact)];

    private readonly Channel<Asked> asked = Channel.CreateBounded<Asked>(new BoundedChannelOptions(64) { FullMode = BoundedChannelFullMode.DropOldest, SingleReader = true });

    private volatile PlanningView view = new(false, string.Empty, null, null);

    private CancellationTokenSource? search;

    public PlanningView View => view;

    private sealed record Asked(string Why, string Who, bool AtOnce);

    /// <summary>Marks came in; plans after a while where any of them can change a plan.</summary>
    public void Marked(IEnumerable<MarkFact> facts)
    {
        if (options.PlansItself && facts.Any(f => !Beside.Contains(f.GetType()))) asked.Writer.TryWrite(new Asked("marks", "the desk", AtOnce: false));
    }

    /// <summary>The farm changed.</summary>
    public void FarmChanged(string who)
    {
        if (options.PlansItself) asked.Writer.TryWrite(new Asked("farm", who, AtOnce: false));
    }

    /// <summary>Somebody wants a plan now.</summary>
    public void Ask(string who) => asked.Writer.TryWrite(new Asked("asked", who, AtOnce: true));

    /// <summary>Ends the search that runs; the best plan so far is kept.</summary>
    public void EndSearch() => Volatile.Read(ref search)?.Cancel();

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            while (await asked.Reader.WaitToReadAsync(stoppingToken)) await TryAsync(await GatherAsync(stoppingToken), stoppingToken);
        }
        catch (Exception closing) when (stoppingToken.IsCancellationRequested && closing is OperationCanceledException or ObjectDisposedException)
        {
            // The desk is being closed; the plan can wait for the next time.
        }
    }

    [SuppressMessage("Design", "CA1031", Justification = "A plan that failed is told and logged; the desk goes on without it.")]
    private async Task TryAsync(Asked want, CancellationToken stop)
    {
        try
        {
            await PlanAsync(want, stop);
        }
        catch (Exception failure) when (!stop.IsCancellationRequested)
        {
            var number = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(4));
            Failed(log, number, failure);
            view = new PlanningView(false, want.Why, null, number);
        }
    }

    /// <summary>Waits until it is quiet, unless somebody asked; what came meanwhile is one wish.</summary>
    private async Task<Asked> GatherAsync(CancellationToken stop)
    {
        asked.Reader.TryRead(out var want);
        var began = time.GetTimestamp();
        while (true)
        {
            while (asked.Reader.TryRead(out var more)) want = more.AtOnce || want is null ? more : want.AtOnce ? want : more;
            if (want!.AtOnce || time.GetElapsedTime(began) > waitMost) return want;
            using var quiet = CancellationTokenSource.CreateLinkedTokenSource(stop);
            var next = asked.Reader.WaitToReadAsync(quiet.Token).AsTask();
            var first = await Task.WhenAny(next, Task.Delay(options.PlanQuiet, quiet.Token));
            if (first != next)
            {
                await quiet.CancelAsync();
                stop.ThrowIfCancellationRequested();
                return want;
            }
        }
    }

    private async Task PlanAsync(Asked want, CancellationToken stop)
    {
        if (await season.ReadAsync(stop) is not { } known) return;
        using var own = CancellationTokenSource.CreateLinkedTokenSource(stop);
        Volatile.Write(ref search, own);
        try
        {
            view = new PlanningView(true, want.Why, null, null);
            var state = known.BookAt(time.GetUtcNow()).State;
            var number = await book.NextPlanNumberAsync(Math.Max(1, known.Ground.PlanNumber), stop);
            state = state with { PlanNumber = (int)number };
            var plan = await Task.Factory.StartNew(
                () => PlanSeason.Run(state, new PlanOptions { Budget = options.PlanBudget, Workers = Math.Max(1, Environment.ProcessorCount) }, told => view = new PlanningView(true, want.Why, told, null), own.Token),
                CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            stop.ThrowIfCancellationRequested();
            var document = PlanDocument.Write(plan);
            if (want.AtOnce || known.Plan is not { } before || Differs(before.Document, document)) await KeepAsync(want, known, plan, document);
        }
        finally
        {
            Volatile.Write(ref search, null);
            view = view with { Running = false };
        }
    }

    private async Task KeepAsync(Asked want, KnownSeason known, SeasonPlan plan, string document)
    {
        var kept = await book.SavePlanAsync(new IssuedPlan(plan.Number, plan.MadeAt, want.Who, want.Why, known.Farm.Version, known.Upto, Encoding.UTF8.GetBytes(document)), CancellationToken.None);
        if (kept.IsRefused) throw new InvalidOperationException("The plan was not kept: " + string.Join("; ", kept.Problems.Select(p => p.Kind.Code)));
        // The logbook tells of it too, under a name of its own, so that telling it twice tells it once.
        var mark = new Mark
        {
            Id = new MarkId(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', await book.IdentityAsync(), "plan-issued", plan.Number))))[..MarkId.Digits]),
            Happened = plan.MadeAt,
            Entered = plan.MadeAt,
            By = want.Who,
            Device = "desk",
            Sure = Sureness.Measured,
            Fact = new PlanIssued(plan.Number, plan.MadeAt, want.Why),
        };
        await book.AppendMarksAsync([StoredMark.Read(MarkDocument.Write(mark)).Value], null, CancellationToken.None);
        season.Changed();
    }

    /// <summary>Whether anything differs that somebody acts on.</summary>
    private static bool Differs(ReadOnlyMemory<byte> before, string after)
    {
        using var old = JsonDocument.Parse(before);
        using var young = JsonDocument.Parse(after);
        return ((string[])["tasks", "orders", "decisions", "conflicts", "lost_batches"]).Any(part =>
            old.RootElement.TryGetProperty(part, out var one) != young.RootElement.TryGetProperty(part, out var other) || (one.ValueKind != JsonValueKind.Undefined && !JsonElement.DeepEquals(one, other)));
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "{Number}: planning failed")]
    private static partial void Failed(ILogger log, string number, Exception failure);
}
