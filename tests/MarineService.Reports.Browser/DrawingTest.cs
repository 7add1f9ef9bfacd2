using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Drawings;
using MarineService.Reports.Tests;

namespace MarineService.Reports.Browser;

/// <summary>Every drawing and chart as a real browser shows it, in the letters of two common fonts.</summary>
public sealed class DrawingTest(Chromium chromium) : IClassFixture<Chromium>
{
    private const string Paper = "#ffffff";

    // A ground on which things lie, never a cue.
    private const string Tint = "#e8eef4";

    // Each text with its box and the colours, top first, of what lies under its middle and near its ends.
    private const string Texts =
        """
        () => {
            const paints = (shape, x, y) => {
                const style = getComputedStyle(shape);
                if (shape.isPointInFill && style.fill !== 'none') {
                    const at = new DOMPoint(x, y).matrixTransform(shape.getScreenCTM().inverse());
                    if (shape.isPointInFill(at)) return style.fill;
                }
                return style.stroke !== 'none' ? style.stroke : null;
            };
            return [...document.querySelectorAll('text')].map(text => {
                const box = text.getBoundingClientRect();
                const y = (box.top + box.bottom) / 2, grounds = [];
                let covered = false;
                for (const x of [box.left + 1, (box.left + box.right) / 2, box.right - 1]) {
                    const under = document.elementsFromPoint(x, y), at = under.indexOf(text);
                    if (at > 0) covered = true;
                    for (const shape of under.slice(at + 1)) {
                        const color = shape instanceof SVGGeometryElement ? paints(shape, x, y) : null;
                        if (color) { grounds.push(color); break; }
                    }
                }
                const selection = getSelection();
                selection.selectAllChildren(text);
                const mark = text.closest('g.mark'), whole = (mark ?? text).getBoundingClientRect();
                return {
                    words: text.textContent, color: getComputedStyle(text).fill, selected: selection.toString(), covered, grounds,
                    left: whole.left, top: whole.top, right: whole.right, bottom: whole.bottom,
                };
            });
        }
        """;

    private const string Shapes =
        """
        () => [...document.querySelectorAll('path, line, circle, rect, polyline, polygon')].filter(shape => !shape.closest('clipPath, defs')).map(shape => {
            const style = getComputedStyle(shape);
            return { words: shape.outerHTML.slice(0, 200), stroke: parseFloat(style.strokeWidth) > 0 ? style.stroke : 'none', fill: style.fill, fillOpacity: +style.fillOpacity };
        })
        """;

    private const string Size = "() => ({ left: 0, top: 0, right: innerWidth, bottom: innerHeight, words: '' })";

    public static TheoryData<string> Names => [.. ClubDrawings.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Drawing_OpensWithoutAnyError_AndAsksForNothingElse(string name)
    {
        await using OpenPage page = await chromium.Open(name, ClubDrawings.All[name]());
        await page.Page.ScreenshotAsync(Path.Combine(Chromium.Folder, $"{name}.png"));

        Assert.Empty(page.Complaints);
        Assert.Equal([page.Page.Url], page.Requests);
    }

    /// <summary>Names that would run, load or close something if they were read as anything but text.</summary>
    [Fact]
    public async Task Drawing_WithHostileNames_RunsAndLoadsNothing()
    {
        string[] names =
        [
            "<script>document.title='ran'</script>", "</text></svg><img src=x onerror=document.title='ran'>", "\" onload=\"document.title='ran'", "]]><script>document.title='ran'</script>",
            "</title><a href='http://192.0.2.1/x'>", "<style>@import 'http://192.0.2.1/x.css'</style>", "&#60;image href='http://192.0.2.1/x.png'/&#62;", "\u202Eyellup\0\uD800",
        ];
        BeltDriveBuilder drive = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise);
        for (int i = 0; i < names.Length; i++)
        {
            names[i] = names[i].Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal);
            (double sin, double cos) = Math.SinCos(-2 * Math.PI * i / names.Length);
            drive = drive.Grooved(names[i], 300 * cos, 300 * sin, 80);
        }

        Drawing drawing = BeltDrawing.Of(drive.Build().Route(names), DisplayUnits.Metric);
        await using OpenPage page = await chromium.Open("hostile", drawing);
        string[] pulleys = await page.Page.EvaluateExpressionAsync<string[]>("[...document.querySelectorAll('circle.pulley')].map(circle => circle.dataset.pulley)");

        Assert.Equal(names[..^1], pulleys[..^1]);
        Assert.Equal("\u202Eyellup\uFFFD\uFFFD", pulleys[^1]);
        Assert.Empty(page.Complaints);
        Assert.Equal([page.Page.Url], page.Requests);
        Assert.Equal(drawing.Title, await page.Page.GetTitleAsync());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Text_IsWhole_CoversNoOther_AndCanBeSelected(string name)
    {
        await using OpenPage page = await chromium.Open(name, ClubDrawings.All[name]());
        foreach (string font in new[] { "", "Liberation Sans" })
        {
            Text[] texts = await Read(page, font);
            Assert.True(texts.Length > 5);
            Assert.Empty(Faults(texts, await page.Page.EvaluateFunctionAsync<Text>(Size)));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Colours_StandApart_TextByFourAndAHalf_MarksByThree(string name)
    {
        await using OpenPage page = await chromium.Open(name, ClubDrawings.All[name]());
        foreach (Text text in await Read(page, ""))
        {
            Assert.All(text.Grounds!.Select(Hex).DefaultIfEmpty(Paper), ground =>
                Assert.True(Contrast.Of(Hex(text.Color!), ground) >= 4.5, $"'{text.Words}', {text.Color} on {ground}"));
        }

        Shape[] shapes = await page.Page.EvaluateFunctionAsync<Shape[]>(Shapes);
        Assert.NotEmpty(shapes);
        Assert.All(shapes, shape => Assert.True(IsSeen(shape), shape.Words));
    }

    /// <summary>The checks above see what they are for: each fault is put into a sound drawing by hand.</summary>
    [Theory]
    [InlineData("t.setAttribute('x', 700); t.setAttribute('text-anchor', 'start')", "leaves the page")]
    [InlineData("t.setAttribute('y', +t.getAttribute('y') + 14)", "on")]
    [InlineData("t.setAttribute('style', 'user-select: none')", "cannot be selected")]
    [InlineData("document.documentElement.append(document.querySelector('circle.pulley[data-pulley=crank]'))", "is covered")]
    public async Task Fault_PutInByHand_IsSeen(string fault, string seen)
    {
        await using OpenPage page = await chromium.Open("text-fault", ClubDrawings.All["curlew-belt-right"]());
        await page.Page.EvaluateFunctionAsync($"() => {{ const t = [...document.querySelectorAll('g.names text')].find(one => one.textContent === 'steering'); {fault}; }}");

        Assert.Contains(Faults(await Read(page, ""), await page.Page.EvaluateFunctionAsync<Text>(Size)), one => one.Contains($" {seen}", StringComparison.Ordinal));
    }

    private static async Task<Text[]> Read(OpenPage page, string font)
    {
        await page.Page.EvaluateFunctionAsync("font => { document.documentElement.style.fontFamily = font; }", font);
        return await page.Page.EvaluateFunctionAsync<Text[]>(Texts);
    }

    private static IEnumerable<string> Faults(Text[] texts, Text page)
    {
        for (int i = 0; i < texts.Length; i++)
        {
            Text text = texts[i];
            if (text.Left < page.Left || text.Top < page.Top || text.Right > page.Right || text.Bottom > page.Bottom)
            {
                yield return $"'{text.Words}' leaves the page";
            }

            if (text.Selected != text.Words)
            {
                yield return $"'{text.Words}' cannot be selected: '{text.Selected}'";
            }

            if (text.Covered)
            {
                yield return $"'{text.Words}' is covered";
            }

            foreach (Text other in texts.Skip(i + 1))
            {
                if (text.Left < other.Right && other.Left < text.Right && text.Top < other.Bottom && other.Top < text.Bottom)
                {
                    yield return $"'{text.Words}' on '{other.Words}'";
                }
            }
        }
    }

    // By its line or by its filling, on paper and on tint. Tint and paper themselves are grounds and never a cue.
    private static bool IsSeen(Shape shape)
    {
        string[] colors = [.. new[] { shape.Stroke, shape.FillOpacity < 1 ? "none" : shape.Fill }.Where(color => color != "none").Select(Hex)];
        return colors.All(color => color is Paper or Tint)
            || colors.Any(color => Contrast.Of(color, Paper) >= 3 && Contrast.Of(color, Tint) >= 3);
    }

    private static string Hex(string rgb) => "#" + string.Concat(rgb.Split('(', ')')[1].Split(',').Take(3).Select(part => byte.Parse(part.Trim(), System.Globalization.CultureInfo.InvariantCulture).ToString("x2", System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>A text with its box in the window, px; for one within a mark, the box of the whole mark.</summary>
    public sealed record Text(
        string Words, double Left, double Top, double Right, double Bottom, string? Color = null, string? Selected = null, bool Covered = false, IReadOnlyList<string>? Grounds = null);

    /// <summary>What is painted, and how.</summary>
    public sealed record Shape(string Words, string Stroke, string Fill, double FillOpacity);
}
