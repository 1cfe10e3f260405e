using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.JSInterop;
using Watersown.Pocket;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Page;
using Watersown.Pocket.Sending;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#desk");
builder.RootComponents.Add<HeadOutlet>("head::after");
// What goes wrong on the line is said on the page; the console is for what is broken.
builder.Logging.AddFilter("System.Net.Http", LogLevel.Warning);
builder.Services.AddSingleton<EdgeLine>().AddSingleton<FarmLine>();

IDevice? device = null;
IJSObjectReference? script = null;
builder.Services.AddSingleton(_ => device!);
builder.Services.AddSingleton(_ => new Browser(script!));
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(_ => new HostLine(new HttpClient { BaseAddress = new Uri(builder.HostEnvironment.BaseAddress) }));
builder.Services.AddSingleton<LinkLine>();
builder.Services.AddSingleton<PlanLine>();
builder.Services.AddSingleton<Desk>();
builder.Services.AddSingleton<Watersown.Pocket.Season.PlanLibrary>();

var app = builder.Build();
script = await app.Services.GetRequiredService<IJSRuntime>().InvokeAsync<IJSObjectReference>("import", "./script/device.js");
device = (IDevice?)await BrowserDevice.OpenAsync(script) ?? new MemoryDevice(new MemoryShelf());
var desk = app.Services.GetRequiredService<Desk>();
await desk.OpenAsync();
desk.Run();
await app.RunAsync();
