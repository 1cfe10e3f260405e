using Watersown.Bench;

// dotnet run -c Release --project bench/Season -- [reckon] [first] [replan] [quality SECONDS] [sheets]
// Each part measures its own baseline in the same run. Results are kept in bench/results.md with the machine named.
var farm = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "../../../../examples/marrowfen/farm.json"));
var parts = args.Length == 0 ? ["reckon", "first", "replan", "quality"] : args;
if (parts.Contains("reckon")) Reckoned.Measure();
if (parts.Contains("first")) FirstPlan.Measure(farm);
if (parts.Contains("replan")) Replanned.Measure(farm);
if (parts.Contains("quality")) Quality.Measure(farm, args.Select(a => int.TryParse(a, out var s) ? s : 0).FirstOrDefault(s => s > 0) is var n and > 0 ? n : 240);
