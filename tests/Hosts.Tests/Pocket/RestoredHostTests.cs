using System.Net;
using System.Text;
using System.Text.Json;
using Watersown.Pocket;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Sending;
using Watersown.Season;
using Watersown.Web;

namespace Watersown.Phones;

/// <summary>A copy was brought back on the host: a phone asks for everything anew and sends again what the copy has not.</summary>
public sealed class RestoredHostTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(5)] // Others sent more than was lost: the number alone tells nothing.
    public async Task What_only_the_phone_still_has_is_sent_again(int others)
    {
        using var told = new Told { Book = "the first" };
        using var http = new HttpClient(told, disposeHandler: false) { BaseAddress = new Uri("http://desk.example/") };
        using var desk = new Desk(new MemoryDevice(new MemoryShelf()), new HostLine(http), new MovedTime());
        await desk.OpenAsync();
        await desk.SendAsync();
        Assert.True((await desk.MarkAsync(new Noted("geese on the levee", null), new MarkOptions { By = "Lucero Quintabar" })).HasValue);
        await desk.SendAsync();
        var mark = Assert.Single(told.Marks);
        // Brought back from a copy that was made before.
        told.Marks.Clear();
        (told.Book, told.Upto) = ("the second", others);
        await desk.SendAsync();
        await desk.SendAsync();
        Assert.Equal(mark.Key, Assert.Single(told.Marks).Key);
        Assert.Equal(0, desk.Unsent);
        // And only once.
        var asked = told.Asked.Count(a => a == "/api/desk");
        await desk.SendAsync();
        Assert.Equal(asked, told.Asked.Count(a => a == "/api/desk"));
    }

    /// <summary>A host that says what it is told to say, and keeps marks.</summary>
    private sealed class Told : HttpMessageHandler
    {
        private static readonly string farm = File.ReadAllText(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"));

        public string Book { get; set; } = string.Empty;

        public long Upto { get; set; }

        public Dictionary<string, string> Marks { get; } = new(StringComparer.Ordinal);

        public List<string> Asked { get; } = [];

        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            var path = request.RequestUri!.AbsolutePath;
            Asked.Add(path);
            var body = path switch
            {
                "/api/desk" => $$"""{"book":"{{Book}}","farm_version":1,"farm":{{farm}},"plan":null,"marks":[{{string.Join(',', Marks.Values)}}],"upto":{{Upto}}}""",
                "/api/changes" => $$"""{"book":"{{Book}}","marks":[],"upto":{{Upto}},"more":false,"farm_version":1,"plan_number":0}""",
                "/api/marks" => await KeepAsync(request.Content!),
                _ => "{}",
            };
            return new HttpResponseMessage(HttpStatusCode.OK) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        }

        private async Task<string> KeepAsync(HttpContent content)
        {
            using var sent = JsonDocument.Parse(await content.ReadAsByteArrayAsync());
            var ids = new List<string>();
            foreach (var mark in sent.RootElement.GetProperty("marks").EnumerateArray())
            {
                ids.Add(mark.GetProperty("id").GetString()!);
                if (Marks.TryAdd(ids[^1], mark.GetRawText())) Upto++;
            }

            return $$"""{"kept":{{JsonSerializer.Serialize(ids)}},"refused":[],"upto":{{Upto}}}""";
        }
    }
}
