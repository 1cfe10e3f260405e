using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Web.Pages;
using Watersown.Web.Schedule;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web;

/// <summary>Starts the desk: reads the options, opens the book, refuses to stand open to others, tells where it is.</summary>
public static class DeskStart
{
    public const int Done = 0;

    /// <summary>Something is wrong with what was given; nothing was started.</summary>
    public const int ProblemsInInput = 2;

    /// <summary>A file, disk, port or database failed.</summary>
    public const int WorldFailed = 3;

    [SuppressMessage("Design", "CA1031", Justification = "The one place that turns a start that failed into an exit code.")]
    public static async Task<int> RunAsync(IReadOnlyList<string> words, TextWriter output, TextWriter error, TimeProvider machine)
    {
        var read = OptionReading.Read(words);
        if (read.IsRefused) return await TellAsync(error, read.Problems);
        try
        {
            return await RunAsync(read.Value, output, error, new DeskClock(machine));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync("A file, disk, port or database failed: " + failure.Message + " The desk was not started. Put that right, then start it again.");
            return WorldFailed;
        }
    }

    private static async Task<int> RunAsync(DeskOptions options, TextWriter output, TextWriter error, DeskClock clock)
    {
        options = WithCopies(options);
        var opened = await Book.OpenAsync(options.Book, clock);
        if (opened.IsRefused) return await DamagedAsync(options, error, opened.Problems);
        await using var book = opened.Value;
        if (await book.LookOverAsync() is { } fault) return await DamagedAsync(options, error, [fault]);
        var ready = await ReadyAsync(book, options, clock);
        await TellAsync(error, ready.Problems);
        if (ready.IsRefused) return ProblemsInInput;
        options = ready.Value;
        await using var app = DeskHost.Build(book, options, clock);
        await app.StartAsync();
        if (await book.LatestPlanAsync() is null && options.PlansItself && await book.LatestFarmAsync() is not null) app.Services.GetRequiredService<PlanRunner>().Ask(options.Owner ?? "desk");
        await SayAsync(app, options, output, clock);
        if (options.Owner is { } owner && options.ReachableByOthers) await FirstCodeAsync(app, book, owner, output, clock);
        await output.FlushAsync();
        await app.WaitForShutdownAsync();
        return Done;
    }

    /// <summary>A farm's book is copied unless somebody wishes otherwise; a desk that shows a story is not.</summary>
    internal static DeskOptions WithCopies(DeskOptions options) => options with
    {
        Copies = options.Copies is { } said ? (said == "none" ? null : said) : options.At is null ? CopyFolder.UsualPath(options.Book) : null,
    };

    /// <summary>A damaged book is left as it is, and its newest good copy is named.</summary>
    private static async Task<int> DamagedAsync(DeskOptions options, TextWriter error, ImmutableArray<Problem> problems) =>
        await TellAsync(error, problems.Any(p => p.Kind == BookProblems.Damaged) ? problems.Add(await OfferCopy.OfAsync(options.Book, options.Copies)) : problems);

    /// <summary>The book has a farm, the clock is set, and nobody can walk in who should not; or everything that is wrong.</summary>
    public static async Task<Outcome<DeskOptions>> ReadyAsync(Book book, DeskOptions options, DeskClock clock)
    {
        if (options.ReachableByOthers && options.Owner is null && !(await book.AccountsAsync()).Any(a => a is { Role: Role.Owner, IsOpen: true }))
            return Outcome<DeskOptions>.Refuse(HostProblems.OpenToOthers.At(string.Empty, ("value", options.ReachedAt)));
        var problems = new List<Problem>();
        if (options.Farm is { } path && await book.LatestFarmAsync() is null)
        {
            var farm = OpenFarm.Run(path, clock);
            problems.AddRange(farm.Problems);
            if (farm.IsRefused) return Outcome<DeskOptions>.Refuse(problems);
            // Boundaries from the file beside it go inside: the book needs no other file.
            var saved = await book.SaveFarmAsync(FarmWriting.Write(farm.Value), 0, options.Owner ?? "desk", "first", CancellationToken.None);
            if (saved.IsRefused) return Outcome<DeskOptions>.Refuse([.. problems, .. saved.Problems]);
        }

        if (options.Owner is { } owner && options.ReachableByOthers && await book.AccountAsync(owner) is null)
        {
            var added = await book.AddAccountAsync(owner, Role.Owner, null);
            if (added.IsRefused) return Outcome<DeskOptions>.Refuse([.. problems, .. added.Problems]);
        }

        var kept = await book.LatestFarmAsync();
        var ground = kept is null ? null : FarmReading.Read(kept.Document, new FarmContext(kept.Saved));
        if (ground is { HasValue: true }) await book.SetAsync("farm-name", ground.Value.Farm.Name);
        if (options.At is { } at) clock.StartAt(MomentOf(at, ground is { HasValue: true } ? ground.Value : null, problems));
        // On one's own machine marks are told by whoever runs the farm.
        var grower = ground is { HasValue: true } ? CrewRoles.Of(ground.Value, CrewRole.Grower).FirstOrDefault()?.Name : null;
        return Outcome<DeskOptions>.Of(options.ReachableByOthers ? options : options with { Owner = options.Owner ?? grower }, problems);
    }

    private static DateTimeOffset MomentOf(WrittenMoment at, SeasonState? ground, List<Problem> problems)
    {
        var clock = (ground is null ? null : FarmClock.Find(ground.Farm.TimeZone)) ?? FarmClock.Utc;
        var found = ImmutableArray.CreateBuilder<Problem>();
        var moment = clock.Read(at, "--at", found);
        problems.AddRange(found);
        return moment;
    }

    private static async Task SayAsync(WebApplication app, DeskOptions options, TextWriter output, DeskClock clock)
    {
        var words = Wording.Words.English.SignIn;
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        foreach (var address in addresses) await output.WriteLineAsync(Template.Fill(words.Address, ("address", (options.PublicName?.ToString() ?? address).TrimEnd('/'))));
        if (!options.ReachableByOthers) await output.WriteLineAsync(words.OnlyHere);
        var bare = options.PublicName is { Scheme: "https" } ? null : options.Urls.FirstOrDefault(u => u.Scheme == Uri.UriSchemeHttp && !DeskOptions.IsOwnMachine(u));
        if (bare is not null) await output.WriteLineAsync(Template.Fill(words.PlainHttp, ("address", bare.ToString())));
        if (clock.SetTo is { } story) await output.WriteLineAsync(Template.Fill(words.StoryClock, ("when", When.Moment(story))));
        var pages = app.Services.GetRequiredService<PageFiles>();
        if (!pages.AreThere) await output.WriteLineAsync(Template.Fill(words.NoPages, ("folder", pages.Folder)));
    }

    /// <summary>An owner who cannot sign in yet gets a code on this console, and on no other.</summary>
    private static async Task FirstCodeAsync(WebApplication app, Book book, string owner, TextWriter output, DeskClock clock)
    {
        var account = await book.AccountAsync(owner);
        var waits = account is { IsOpen: true } && (Secrets.IsCode(account.PasswordHash) || (account.PasswordHash is null && (await book.PasskeysAsync(owner)).IsEmpty));
        if (!waits) return;
        var (code, until) = (Secrets.NewCode(), clock.GetUtcNow() + Secrets.CodeLasts);
        await book.SetPasswordAsync(owner, Secrets.KeepCode(code, until));
        var address = app.Services.GetRequiredService<DeskOptions>().PublicName?.ToString() ?? app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        var words = Wording.Words.English.SignIn;
        await output.WriteLineAsync(Template.Fill(words.FirstCode, ("name", owner), ("address", address.TrimEnd('/') + "/sign-in"), ("code", code)));
        await output.WriteLineAsync(Template.Fill(words.CodeLasts, ("when", When.Moment(until.ToLocalTime()))));
    }

    private static async Task<int> TellAsync(TextWriter error, ImmutableArray<Problem> problems)
    {
        foreach (var problem in problems) await error.WriteLineAsync(Say.Problem(problem, Language.English));
        return ProblemsInInput;
    }
}
