using System.Net;
using Watersown.Wording;

namespace Watersown.Web.Edge;

/// <summary>
/// Which names the desk answers to. A page elsewhere can have its own name point at this machine and so read what it must
/// not; it cannot do that with a bare address or with a name that it does not own.
/// </summary>
/// <param name="options">How the desk was started.</param>
internal sealed class HostGuard(DeskOptions options)
{
    private readonly ImmutableHashSet<string> names = ImmutableHashSet.CreateRange(StringComparer.OrdinalIgnoreCase,
        ((string?[])["localhost", Dns.GetHostName(), Dns.GetHostName() + ".local", options.PublicName?.Host, .. options.Urls.Select(u => u.Host)]).OfType<string>());

    /// <summary>What is wrong with the way a request came; nothing where it is as it should be.</summary>
    public Problem? Fault(HttpContext context)
    {
        var host = context.Request.Host.Host;
        if (!IPAddress.TryParse(host.Trim('[', ']'), out _) && !names.Contains(host)) return HostProblems.UnknownHost.At(string.Empty, ("value", Say.Short(host, 80)));
        var headers = context.Request.Headers;
        var relayed = headers.ContainsKey("X-Forwarded-For") || headers.ContainsKey("X-Forwarded-Host") || headers.ContainsKey("Forwarded");
        return relayed && !options.ReachableByOthers ? HostProblems.UnexpectedProxy.At(string.Empty) : null;
    }
}
