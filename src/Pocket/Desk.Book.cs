using Watersown.Pocket.Sending;

namespace Watersown.Pocket;

public sealed partial class Desk
{
    /// <summary>How the copies of the book stand; none where the host has not said, or does not tell this person.</summary>
    public CopyNews? Copies { get; private set; }

    /// <summary>Asks how the copies stand, with all that there is to tell.</summary>
    public async Task AskCopiesAsync()
    {
        var answer = await host.AskAsync("api/copies");
        HearCopies(answer);
    }

    /// <summary>Has a copy made now; what the host says where it would not.</summary>
    public async Task<string?> MakeCopyAsync()
    {
        var answer = await host.SendAsync("api/copies", "{}"u8.ToArray());
        HearCopies(answer);
        return answer.State switch { LineState.Reached => null, LineState.Refused => HostWords.Problems(answer.Body), _ => Words.Book.NoAnswer };
    }

    /// <summary>Brings a whole-farm file to the host, carried by whoever has the file.</summary>
    /// <param name="carry">Carries it to an address with the session's token; gives the host's answer as text, nothing where there was none.</param>
    public async Task<BroughtFarm?> BringFarmAsync(Func<string, string?, Task<string?>> carry)
    {
        var told = await carry("api/whole-farm", host.Token);
        var brought = told is null ? null : HostWords.Brought(System.Text.Encoding.UTF8.GetBytes(told));
        if (brought is { Taken: true }) await SendAsync();
        return brought;
    }

    private void HearCopies(HostAnswer answer)
    {
        if (answer.State != LineState.Reached || HostWords.Copies(answer.Body) is not { } news) return;
        Copies = news;
        Tell();
    }
}
