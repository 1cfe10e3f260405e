using System.Globalization;
using Watersown.Bench;
using Watersown.Documents.Farms;

// Works floods inside a browser and says on its console how long each took; bench/Browser publishes it, opens it and listens.
await using var farm = typeof(Works).Assembly.GetManifestResourceStream("farm.json")!;
var bytes = new byte[farm.Length];
await farm.ReadExactlyAsync(bytes);
var state = FarmReading.Read(bytes, new FarmContext(TimeProvider.System.GetUtcNow())).Value;
foreach (var (_, parts, work) in Works.Of(state))
{
    var (best, median) = Measured.Time(work);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"took {best.TotalMilliseconds / parts:R} {median.TotalMilliseconds / parts:R}"));
    // The browser hands lines on only when it is not at work.
    await Task.Delay(20);
}
