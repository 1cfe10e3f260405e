using Watersown.Pocket;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Season;
using Watersown.Pocket.Sending;
using Watersown.Season;
using Watersown.Web;

namespace Watersown.Phones;

/// <summary>
/// A phone without its screen: the desk of the pocket on a device in memory, on a line to a host that a test cuts, slows or
/// lets lose answers.
/// </summary>
internal sealed class SomePhone : IAsyncDisposable
{
    private readonly MemoryShelf shelf;
    private readonly MovedTime time;
    private readonly HttpClient http;

    private SomePhone(MemoryShelf shelf, MovedTime time, Wire wire, Uri host)
    {
        (this.shelf, this.time, Wire) = (shelf, time, wire);
        http = new HttpClient(wire, disposeHandler: false) { BaseAddress = host };
        Desk = new Desk(new MemoryDevice(shelf), new HostLine(http), time);
    }

    public Desk Desk { get; private set; }

    public Wire Wire { get; }

    /// <summary>A phone of a person that has opened the desk once at the host, and hears from it no more until it is joined.</summary>
    public static async Task<SomePhone> AsNewAsync(RunningDesk host, string person)
    {
        var phone = new SomePhone(new MemoryShelf(), host.Time, new Wire(), host.Address);
        await phone.Desk.OpenAsync();
        await phone.Desk.ChooseAsync(phone.Desk.Settings with { Name = person });
        await phone.JoinAsync();
        phone.Wire.Cut = true;
        return phone;
    }

    /// <summary>Puts down a fact as this phone's person.</summary>
    public async Task<Mark> MarkAsync(MarkFact fact, MarkOptions? options = null)
    {
        var outcome = await Desk.MarkAsync(fact, (options ?? new MarkOptions()) with { By = Desk.Settings.Name });
        Assert.True(outcome.HasValue, string.Join("; ", outcome.Problems));
        await Desk.SendAsync();
        return outcome.Value;
    }

    /// <summary>Back in coverage: everything is sent and heard.</summary>
    public async Task JoinAsync()
    {
        Wire.Cut = false;
        await Desk.SendAsync();
        for (var i = 0; Desk.Line != LineState.Reached || Desk.Unsent > 0; i++)
        {
            Assert.True(i < 200, $"the phone does not reach the host: {Desk.Line}, {Desk.Unsent} unsent");
            await Task.Delay(20);
            await Desk.SendAsync();
        }
    }

    /// <summary>The page is closed and opened again: only what the device keeps is left.</summary>
    public async Task OpenAgainAsync()
    {
        Desk.Dispose();
        Desk = new Desk(new MemoryDevice(shelf), new HostLine(http), time);
        await Desk.OpenAsync();
    }

    /// <summary>The plans as this phone's page sees them.</summary>
    public PlanLibrary Plans() => new(new MemoryDevice(shelf), new HostLine(http), Desk);

    /// <summary>A second page of the desk on the same phone.</summary>
    public Desk AnotherPage() => new(new MemoryDevice(shelf), new HostLine(http), time);

    public ValueTask DisposeAsync()
    {
        Desk.Dispose();
        http.Dispose();
        Wire.Dispose();
        return ValueTask.CompletedTask;
    }
}

/// <summary>The line between phone and host.</summary>
internal sealed class Wire : DelegatingHandler
{
    public Wire()
        : base(new SocketsHttpHandler { UseCookies = false })
    {
    }

    /// <summary>No signal.</summary>
    public bool Cut { get; set; }

    /// <summary>Answers to sends of marks that get lost on their way back, one taken off for each.</summary>
    public int AnswersLost { get; set; }

    /// <summary>Sends of marks that reached the host.</summary>
    public int Sends { get; private set; }

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        if (Cut) throw new HttpRequestException("no signal");
        var answer = await base.SendAsync(request, cancellationToken);
        if (request.RequestUri!.AbsolutePath != "/api/marks") return answer;
        Sends++;
        if (AnswersLost == 0) return answer;
        AnswersLost--;
        answer.Dispose();
        throw new HttpRequestException("the answer was lost");
    }
}
