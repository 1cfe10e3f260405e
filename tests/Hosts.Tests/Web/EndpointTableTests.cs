using System.Text;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Each role against each endpoint. An endpoint that the table does not have fails the build.</summary>
public sealed class EndpointTableTests
{
    // What is asked, then the status for nobody, reader, crew, family and owner. What a role may not do is 401 or 403; what
    // it may is whatever the endpoint says to this odd but well-formed request.
    private const string Table = """
        GET /health                     200 200 200 200 200
        GET /sign-in                    200 200 200 200 200
        GET /sign-in.js                 200 200 200 200 200
        POST /sign-in                   422 422 422 422 422
        POST /sign-out                  401 204 204 204 204
        GET /api/you                    401 200 200 200 200
        PUT /api/password               401 422 422 422 422
        POST /api/passkeys/options      401 200 200 200 200
        POST /api/passkeys              401 422 422 422 422
        GET /api/passkeys               401 200 200 200 200
        DELETE /api/passkeys/{id}       401 404 404 404 404
        POST /sign-in/passkey/options   200 200 200 200 200
        POST /sign-in/passkey           422 422 422 422 422
        GET /api/accounts               401 403 403 403 200
        POST /api/accounts              401 403 403 403 422
        PUT /api/accounts/{name}        401 403 403 403 422
        DELETE /api/accounts/{name}     401 403 403 403 422
        POST /api/accounts/{name}/code  401 403 403 403 422
        GET /api/sessions               401 200 200 200 200
        DELETE /api/sessions/{id}       401 404 404 404 404
        GET /api/sign-ins               401 403 403 403 200
        GET /api/desk                   401 200 200 200 200
        GET /api/changes                401 200 200 200 200
        POST /api/marks                 401 403 422 422 422
        PUT /api/attachments/{id}       401 403 422 422 422
        GET /api/attachments/{id}       401 404 404 404 404
        POST /api/edges/read            401 403 403 422 422
        GET /api/plan                   401 200 200 200 200
        POST /api/plan                  401 403 403 202 202
        GET /api/plan/progress          401 200 200 200 200
        DELETE /api/plan/progress       401 403 403 204 204
        GET /api/plans                  401 200 200 200 200
        GET /api/plans/{number}         401 404 404 404 404
        GET /api/farm                   401 200 200 200 200
        PUT /api/farm                   401 403 403 422 422
        GET /api/whole-farm             401 403 403 403 200
        POST /api/whole-farm            401 403 403 403 422
        GET /api/copies                 401 403 403 200 200
        POST /api/copies                401 403 403 403 422
        GET /api/links                  401 403 403 200 200
        POST /api/links                 401 403 403 422 422
        DELETE /api/links/{id}          401 403 403 404 404
        GET /l/{token}                  404 404 404 404 404
        POST /l/{token}                 404 404 404 404 404
        POST /text                      403 403 403 403 403
        POST /api/text                  401 403 422 422 422
        POST /api/text-secret           401 403 403 403 201
        DELETE /api/text-secret         401 403 403 403 204
        GET /{**path}                   404 404 404 404 404
        HEAD /{**path}                  404 404 404 404 404
        """;

    private static readonly Role?[] Askers = [null, Role.Reader, Role.Crew, Role.Family, Role.Owner];

    private static ImmutableArray<(string Method, string Pattern, int[] Status)> Rows =>
        [.. Table.Split('\n').Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).Select(c => (c[0], c[1], c[2..].Select(int.Parse).ToArray()))];

    [Fact]
    public async Task Every_role_gets_at_every_endpoint_what_the_table_says()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        var wrong = new List<string>();
        foreach (var (method, pattern, status) in Rows)
        {
            for (var i = 0; i < Askers.Length; i++)
            {
                using var client = Askers[i] is { } role ? await desk.AsAsync(role) : Nobody(desk);
                using var answer = await client.SendAsync(Ask(method, pattern));
                if ((int)answer.StatusCode != status[i]) wrong.Add($"{method} {pattern} as {Askers[i]?.ToString() ?? "nobody"}: {(int)answer.StatusCode} and not {status[i]}: {await answer.Content.ReadAsStringAsync()}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task Every_endpoint_stands_in_the_table()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        var there = desk.App.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints).OfType<RouteEndpoint>()
            .SelectMany(e => (e.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods ?? ["any"]).Select(m => m + " " + e.RoutePattern.RawText)).Order(StringComparer.Ordinal).Distinct();
        Assert.Equal(Rows.Select(r => r.Method + " " + r.Pattern).Order(StringComparer.Ordinal), there);
    }

    [Fact]
    public async Task Every_endpoint_says_who_may_ask_it()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        Assert.All(desk.App.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints), e => Assert.NotNull(e.Metadata.GetMetadata<SignIn.Access>()));
    }

    [Fact]
    public async Task Every_answer_tells_browsers_what_not_to_do()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var client = Nobody(desk);
        foreach (var (method, pattern, _) in Rows)
        {
            using var answer = await client.SendAsync(Ask(method, pattern));
            var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
            Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("script-src 'unsafe-inline'", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.Equal(pattern == "/sign-in" && method == "GET" ? "same-origin" : "no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
            Assert.False(answer.Headers.Contains("Set-Cookie"), pattern);
            Assert.False(answer.Headers.Contains("Server"), pattern);
        }
    }

    private static HttpClient Nobody(RunningDesk desk)
    {
        var client = desk.Stranger();
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        return client;
    }

    private static HttpRequestMessage Ask(string method, string pattern)
    {
        var path = pattern.Replace("{**path}", "nothing-here.txt", StringComparison.Ordinal).Replace("{id}", "nosuch", StringComparison.Ordinal)
            .Replace("{name}", "nosuch", StringComparison.Ordinal).Replace("{number}", "9999", StringComparison.Ordinal).Replace("{token}", new string('A', 43), StringComparison.Ordinal);
        var request = new HttpRequestMessage(new HttpMethod(method), path);
        if (method is "POST" or "PUT") request.Content = new StringContent("{}", Encoding.UTF8, "application/json");
        return request;
    }
}
