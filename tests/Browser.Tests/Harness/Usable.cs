using System.Globalization;
using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>What must hold on every screen at every step: everybody can read it, press it and get about in it.</summary>
internal static class Usable
{
    // All rules of the scan, and the one on the size of what is pressed, which is off unless asked for.
    private static readonly AxeRunOptions Rules = new()
    {
        ResultTypes = [ResultType.Violations],
        Rules = new Dictionary<string, RuleOptions>(StringComparer.Ordinal) { ["target-size"] = new() { Enabled = true } },
    };

    private const int HeightMost = 16_000;

    private const int Spare = 400;

    // Widths in CSS pixels: a narrow phone; 1280 at 200 %; 1280 at 400 %.
    private static readonly int[] Widths = [360, 640, 320];

    /// <summary>Fails with everything that was found, where anything was.</summary>
    public static void Nothing(IReadOnlyCollection<string> found) => Assert.True(found.Count == 0, string.Join("\n", found));

    /// <summary>What the scan finds against the accessibility rules, on the whole page laid out at once: what sticks to the bottom of the window covers nothing then.</summary>
    public static async Task<ImmutableArray<string>> ScanAsync(IPage page)
    {
        var usual = page.ViewportSize!;
        await page.SetViewportSizeAsync(usual.Width, Math.Clamp(await page.EvaluateAsync<int>(SettledHeight) + Spare, usual.Height, HeightMost));
        var result = await page.RunAxe(Rules);
        await page.SetViewportSizeAsync(usual.Width, usual.Height);
        return [.. result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help}: {n.Target} {n.Html}"))];
    }

    /// <summary>Widths at which the page itself must be moved sideways to be read, with the first parts that stick out.</summary>
    public static async Task<ImmutableArray<string>> OverflowAsync(IPage page)
    {
        var usual = page.ViewportSize!;
        var found = ImmutableArray.CreateBuilder<string>();
        foreach (var width in Widths)
        {
            await page.SetViewportSizeAsync(width, 740);
            var wide = await page.EvaluateAsync<string?>(WideParts);
            if (wide is not null) found.Add(string.Create(CultureInfo.InvariantCulture, $"wider than {width} px: {wide}"));
        }

        await page.SetViewportSizeAsync(usual.Width, usual.Height);
        return found.ToImmutable();
    }

    /// <summary>What cannot be reached with the tabulator, has no visible focus, or lies under something else when it has it.</summary>
    public static async Task<ImmutableArray<string>> KeyboardAsync(IPage page)
    {
        var wanted = await page.EvaluateAsync<int>(NumberPressables);
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var found = ImmutableArray.CreateBuilder<string>();
        // A map that has just come brings stops of its own, which were not counted.
        for (var i = 0; i < (wanted * 2) + 20 && reached.Count < wanted; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var at = await page.EvaluateAsync<JsonElement>(Focused);
            if (at.ValueKind != JsonValueKind.Object) continue;
            var number = at.GetProperty("number").GetString();
            if (number is { Length: > 0 }) reached.Add(number);
            if (at.GetProperty("fault").GetString() is { Length: > 0 } fault) found.Add(fault);
        }

        found.AddRange(await page.EvaluateAsync<string[]>(Unreached, reached.ToArray()));
        return found.ToImmutable();
    }

    /// <summary>All three.</summary>
    public static async Task<ImmutableArray<string>> AllAsync(IPage page) => [.. await ScanAsync(page), .. await OverflowAsync(page), .. await KeyboardAsync(page)];

    // Some parts ask the host first; the page is as tall as it will be when it was so for a fifth of a second.
    private const string SettledHeight = """
        async () => {
          const root = document.documentElement;
          for (let was = -1, i = 0; i < 25 && was !== root.scrollHeight; i++) { was = root.scrollHeight; await new Promise(done => setTimeout(done, 200)); }
          return root.scrollHeight;
        }
        """;

    private const string WideParts = """
        () => {
          const root = document.scrollingElement;
          if (root.scrollWidth <= root.clientWidth) return null;
          const parts = [...document.body.querySelectorAll('*')].filter(e => e.getBoundingClientRect().right > root.clientWidth + 1 && !e.closest('.desk-table, .working-sum'));
          return root.scrollWidth + ' px: ' + parts.slice(0, 4).map(e => e.localName + '.' + (e.className.baseVal ?? e.className) + ' ' + Math.round(e.getBoundingClientRect().right)).join('; ');
        }
        """;

    private const string NumberPressables = """
        () => {
          document.activeElement?.blur();
          getSelection()?.removeAllRanges();
          let n = 0;
          const seen = e => e.checkVisibility({ visibilityProperty: true }) && e.getClientRects().length > 0;
          const group = new Set();
          for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')) {
            delete e.dataset.tab;
            if (e.disabled || e.tabIndex < 0 || !seen(e)) continue;
            if (e.type === 'radio') { if (group.has(e.name)) continue; group.add(e.name); }
            e.dataset.tab = String(n++);
          }
          return n;
        }
        """;

    private const string Focused = """
        () => {
          const e = document.activeElement;
          if (!e || e === document.body) return null;
          const name = (e.getAttribute('aria-label') ?? e.textContent ?? '').trim().slice(0, 40);
          const style = getComputedStyle(e);
          const shown = (style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0) || style.boxShadow !== 'none';
          const box = e.getBoundingClientRect();
          const points = [[.5, .5], [.1, .2], [.9, .2], [.1, .8], [.9, .8]].map(([x, y]) => [box.left + box.width * x, box.top + box.height * y]);
          const free = points.some(([x, y]) => { const top = document.elementFromPoint(x, y); return top && (top === e || e.contains(top) || top.contains(e) || top.closest('label')?.control === e); });
          const fault = !shown ? 'no visible focus on ' : !free && e.localName !== 'canvas' ? 'hidden under something while focused: ' : '';
          return { number: e.dataset.tab ?? '', fault: fault && fault + e.localName + ' ' + name };
        }
        """;

    private const string Unreached = """
        reached => {
          const there = new Set(reached);
          return [...document.querySelectorAll('[data-tab]')].filter(e => !there.has(e.dataset.tab)).map(e => 'not reached with the tabulator: ' + e.localName + ' ' + (e.getAttribute('aria-label') ?? e.textContent ?? '').trim().slice(0, 40));
        }
        """;
}
