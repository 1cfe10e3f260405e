using System.Globalization;
using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Web.Season;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Schedule;

/// <summary>Plans: the newest, every one that was ever issued, and a new one when wanted.</summary>
internal sealed class PlanEndpoints(Book book, PlanRunner runner, DeskOptions options)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/plan", NewestAsync).WithMetadata(Access.Readers);
        routes.MapPost("/api/plan", AskAsync).WithMetadata(Access.Farmers);
        routes.MapGet("/api/plan/progress", ProgressAsync).WithMetadata(Access.Readers);
        routes.MapDelete("/api/plan/progress", EndAsync).WithMetadata(Access.Farmers);
        routes.MapGet("/api/plans", ListAsync).WithMetadata(Access.Readers);
        routes.MapGet("/api/plans/{number}", OneAsync).WithMetadata(Access.Readers);
    }

    private async Task NewestAsync(HttpContext context) => await ShowAsync(context, await book.LatestPlanAsync(context.RequestAborted), "-");

    private async Task OneAsync(HttpContext context, string number)
    {
        var plan = long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? await book.PlanAsync(n, context.RequestAborted) : null;
        await ShowAsync(context, plan, Say.Short(number, 20));
    }

    private static Task ShowAsync(HttpContext context, IssuedPlan? plan, string asked) => plan is null
        ? Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoSuchPlan.At("plan", ("value", asked)))
        : Reply.BytesAsync(context, StatusCodes.Status200OK, Reply.Json, plan.Document);

    private async Task ListAsync(HttpContext context)
    {
        var plans = await book.PlansAsync(context.RequestAborted);
        await Reply.ListAsync(context, "plans", plans, (json, plan) =>
        {
            json.WriteNumber("number", plan.Number);
            json.WriteString("made", plan.Made);
            json.WriteString("who", plan.Who);
            json.WriteString("why", plan.Why);
            json.WriteNumber("farm_version", plan.FarmVersion);
            json.WriteNumber("marks_upto", plan.MarksUpto);
        });
    }

    private Task AskAsync(HttpContext context)
    {
        runner.Ask(Door.CallerOf(context).Name);
        context.Response.Headers.Location = "/api/plan/progress";
        return Reply.JsonAsync(context, StatusCodes.Status202Accepted, json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("asked", value: true);
            json.WriteEndObject();
        });
    }

    private Task EndAsync(HttpContext context)
    {
        runner.EndSearch();
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    private Task ProgressAsync(HttpContext context)
    {
        var view = runner.View;
        return Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("running", view.Running);
            json.WriteString("why", view.Why);
            json.WriteNumber("budget_s", options.PlanBudget.TotalSeconds);
            if (view.Latest is { } told)
            {
                json.WriteNumber("elapsed_s", Math.Round(told.Elapsed.TotalSeconds, 3));
                json.WriteNumber("cost", told.Cost.Amount);
                json.WriteNumber("bound", told.Bound.Amount);
                json.WriteNumber("gap_pct", Math.Round(told.Gap.Percent, 3));
            }

            if (view.Failed is { } number) json.WriteString("failed", number);
            json.WriteEndObject();
        });
    }
}
