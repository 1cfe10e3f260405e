using System.Diagnostics;
using System.Globalization;
using System.Threading.Channels;
using Microsoft.Playwright;
using Watersown.Documents.Farms;

namespace Watersown.Bench;

/// <summary>Floods reckoned inside the browser, beside the same works by this process on the same machine.</summary>
internal static class FloodInside
{
    // Interpreted, the slowest work takes seconds, and is run some ten times.
    private static readonly TimeSpan patience = TimeSpan.FromMinutes(5);

    public static async Task MeasureAsync(IBrowser browser, string root, string folder)
    {
        await PublishAsync(root, folder);
        var state = FarmReading.Read(await File.ReadAllBytesAsync(Path.Combine(root, "examples", "marrowfen", "farm.json")), new FarmContext(TimeProvider.System.GetUtcNow())).Value;
        var works = Works.Of(state);
        await using var context = await browser.NewContextAsync();
        var lines = await OpenAsync(await context.NewPageAsync(), Path.Combine(folder, "wwwroot"));
        Console.WriteLine($"Chromium {browser.Version}, .NET's runtime for browsers without compiling ahead; beside it this process on the same machine, after it");
        Measured.Row("what", "in the browser: best, ms", "median", "here: best, ms", "median", "times as long");
        Measured.Row("---", "---:", "---:", "---:", "---:", "---:");
        var inside = new List<double[]>();
        for (var i = 0; i < works.Length; i++) inside.Add(await NextAsync(lines));
        foreach (var (took, (name, parts, work)) in inside.Zip(works))
        {
            var (best, median) = Measured.Time(work);
            var here = best.TotalMilliseconds / parts;
            Measured.Row(name, Measured.Figure(took[0], "0.000"), Measured.Figure(took[1], "0.000"), Measured.Figure(here, "0.000"), Measured.Figure(median.TotalMilliseconds / parts, "0.000"), Measured.Figure(took[0] / here, "0.0"));
        }

        for (var i = 0; i < works.Length; i++)
        {
            if (works[i].Parts > 1) Console.WriteLine($"{works[i].Name}: {Measured.Figure(1000 / inside[i][1], "N0")} fields a second in the browser, at the median");
        }
    }

    private static async Task PublishAsync(string root, string folder)
    {
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = root, UseShellExecute = false, RedirectStandardOutput = true };
        foreach (var word in (string[])["publish", Path.Combine("bench", "FloodPage", "FloodPage.csproj"), "-c", "Release", "-o", folder, "--nologo", "-v", "quiet"]) start.ArgumentList.Add(word);
        using var publish = Process.Start(start)!;
        var said = await publish.StandardOutput.ReadToEndAsync();
        await publish.WaitForExitAsync();
        if (publish.ExitCode != 0) throw new InvalidOperationException("bench/FloodPage was not published: " + said);
    }

    // The published folder is handed to the browser file by file; nothing is asked of any line.
    private static async Task<ChannelReader<string>> OpenAsync(IPage page, string folder)
    {
        var lines = Channel.CreateUnbounded<string>();
        page.Console += (_, said) => lines.Writer.TryWrite(said.Text);
        page.PageError += (_, fault) => lines.Writer.TryWrite("fault " + fault);
        await page.RouteAsync("**/*", async route =>
        {
            var asked = Uri.UnescapeDataString(new Uri(route.Request.Url).AbsolutePath).TrimStart('/');
            var file = Path.Combine(folder, asked.Length == 0 ? "index.html" : asked);
            if (!File.Exists(file)) await route.FulfillAsync(new() { Status = 404 });
            else await route.FulfillAsync(new() { Path = file, ContentType = KindOf(file) });
        });
        await page.GotoAsync("http://localhost/");
        return lines.Reader;
    }

    private static string KindOf(string file) => Path.GetExtension(file) switch
    {
        ".html" => "text/html",
        ".js" => "text/javascript",
        ".json" => "application/json",
        ".wasm" => "application/wasm",
        _ => "application/octet-stream",
    };

    private static async Task<double[]> NextAsync(ChannelReader<string> lines)
    {
        using var end = new CancellationTokenSource(patience);
        while (true)
        {
            var line = await lines.ReadAsync(end.Token);
            if (line.StartsWith("took ", StringComparison.Ordinal)) return [.. line.Split(' ').Skip(1).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
            await Console.Error.WriteLineAsync(line);
        }
    }
}
