using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Drawings;

namespace MarineService.Reports.Browser;

/// <summary>A belt drawing measured in the page, as with a ruler on the screen, against the drive's own figures.</summary>
public sealed class BeltDrawingTest(Chromium chromium) : IClassFixture<Chromium>
{
    /// <summary>Core's figures are exact, and the picture's coordinates have two decimals: what is farther off is drawn wrong.</summary>
    private const double ToleranceMm = 0.1;

    // Where things are painted, brought back to the engine's millimetres by what the group says of its scale.
    private const string Measure =
        """
        () => {
            const drive = document.querySelector('g.drive');
            const back = drive.getScreenCTM().inverse();
            const scale = +drive.dataset.unitsPerMm, left = +drive.dataset.originX, foot = +drive.dataset.originY;
            const places = [];
            const put = (what, x, y) => {
                const at = new DOMPoint(x, y).matrixTransform(back);
                places.push({ what, x: (at.x - left) / scale, y: (foot - at.y) / scale });
            };
            const along = (what, shape, share) => {
                const at = shape.getPointAtLength(share * shape.getTotalLength()).matrixTransform(shape.getScreenCTM());
                put(what, at.x, at.y);
            };
            for (const circle of drive.querySelectorAll('circle.pulley')) {
                const name = circle.dataset.pulley, painted = circle.getBoundingClientRect(), box = circle.getBBox(), to = circle.getScreenCTM();
                put(name + ' middle', (painted.left + painted.right) / 2, (painted.top + painted.bottom) / 2);
                const [right, top] = [new DOMPoint(box.x + box.width, box.y + box.height / 2).matrixTransform(to), new DOMPoint(box.x + box.width / 2, box.y).matrixTransform(to)];
                put(name + ' right', right.x, right.y);
                put(name + ' top', top.x, top.y);
            }
            for (const span of drive.querySelectorAll('line.span')) {
                along(span.dataset.from + ' exit', span, 0);
                along(span.dataset.to + ' entry', span, 1);
            }
            for (const arc of drive.querySelectorAll('path.arc')) {
                for (let i = 0; i <= 4; i++) along(arc.dataset.pulley + ' wrap ' + i, arc, i / 4);
            }
            return places;
        }
        """;

    public static TheoryData<string> Belts => [.. ClubDrawings.Belts.Keys];

    /// <summary>Faults that a look at the picture may miss, each far from a millimetre; and the marks that must give it away.</summary>
    public static TheoryData<string, string[]> Faults => new()
    {
        { "const c = document.querySelector('circle.pulley[data-pulley=idler]'); c.cx.baseVal.value += 0.2 * scale", ["idler middle", "idler right", "idler top"] },
        { "const c = document.querySelector('circle.pulley[data-pulley=crank]'); c.r.baseVal.value += 0.2 * scale", ["crank right", "crank top"] },
        { "const s = document.querySelector('line.span[data-from=alternator]'); s.y1.baseVal.value -= 0.2 * scale", ["alternator exit"] },
        { "const a = document.querySelector('path.arc[data-pulley=alternator]'); a.setAttribute('d', a.getAttribute('d').replace(/0 ([01]) /g, (m, s) => `0 ${1 - s} `))", ["alternator wrap 1", "alternator wrap 3"] },
    };

    [Theory]
    [MemberData(nameof(Belts))]
    public async Task Picture_HasPulleysSpansAndWrapsWhereTheDriveHasThem(string name)
    {
        BeltRouting routing = ClubDrawings.Belts[name];
        await using OpenPage page = await chromium.Open(name, ClubDrawings.All[name]());

        Dictionary<string, (double X, double Y)> expected = Expected(routing);
        Assert.True(expected.Count > 4 * routing.Stops.Count);
        Assert.Empty(Deviations(expected, await page.Page.EvaluateFunctionAsync<Place[]>(Measure)));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task Fault_OfAFifthOfAMillimeter_IsSeen(string fault, string[] seen)
    {
        await using OpenPage page = await chromium.Open("belt-fault", ClubDrawings.All["curlew-belt-right"]());
        await page.Page.EvaluateFunctionAsync($"() => {{ const scale = +document.querySelector('g.drive').dataset.unitsPerMm; {fault}; }}");

        Assert.Equal(seen, Deviations(Expected(ClubDrawings.Belts["curlew-belt-right"]), await page.Page.EvaluateFunctionAsync<Place[]>(Measure)).Select(one => one.Split(':')[0]));
    }

    /// <summary>A drawing in US units, without an examination, is the same picture.</summary>
    [Fact]
    public async Task Picture_InUsUnits_HasTheSamePlaces()
    {
        BeltRouting routing = ClubDrawings.Belts["curlew-belt-right"];
        await using OpenPage page = await chromium.Open("curlew-belt-us", BeltDrawing.Of(routing, DisplayUnits.UsCustomary));

        Assert.Empty(Deviations(Expected(routing), await page.Page.EvaluateFunctionAsync<Place[]>(Measure)));
    }

    private static Dictionary<string, (double X, double Y)> Expected(BeltRouting routing)
    {
        Dictionary<string, (double X, double Y)> places = [];
        foreach (Pulley pulley in routing.Drive.Pulleys)
        {
            places.Add($"{pulley.Name} middle", (pulley.XMm, pulley.YMm));
            places.Add($"{pulley.Name} right", (pulley.XMm + (pulley.DiameterMm / 2), pulley.YMm));
            places.Add($"{pulley.Name} top", (pulley.XMm, pulley.YMm + (pulley.DiameterMm / 2)));
        }

        IReadOnlyList<StopGeometry> stops = routing.Measure().Value.Stops;
        for (int i = 0; i < stops.Count; i++)
        {
            StopGeometry stop = stops[i];
            string name = routing.Stops[i].PulleyName;
            places.Add($"{name} exit", (stop.ExitXMm, stop.ExitYMm));
            places.Add($"{name} entry", (stop.EntryXMm, stop.EntryYMm));

            // The way from entry to exit in four equal parts, in the sense in which the pulley turns.
            double start = Math.Atan2(stop.EntryYMm - stop.CenterYMm, stop.EntryXMm - stop.CenterXMm);
            for (int part = 0; part <= 4; part++)
            {
                double angle = start + ((stop.TurnsCounterClockwise ? 1 : -1) * stop.WrapRadians * part / 4);
                places.Add($"{name} wrap {part}", (stop.CenterXMm + (stop.PitchRadiusMm * Math.Cos(angle)), stop.CenterYMm + (stop.PitchRadiusMm * Math.Sin(angle))));
            }
        }

        return places;
    }

    private static IEnumerable<string> Deviations(Dictionary<string, (double X, double Y)> expected, Place[] measured)
    {
        ILookup<string, Place> found = measured.ToLookup(place => place.What);
        foreach (string name in expected.Keys.Union(measured.Select(place => place.What)))
        {
            if (!expected.TryGetValue(name, out (double X, double Y) right) || found[name].ToArray() is not [Place place])
            {
                yield return $"{name}: in one of both only, or more than once";
            }
            else if (Math.Sqrt(Math.Pow(place.X - right.X, 2) + Math.Pow(place.Y - right.Y, 2)) is var off && !(off < ToleranceMm))
            {
                yield return FormattableString.Invariant($"{name}: {off:0.000} mm off, at ({place.X:0.00}, {place.Y:0.00}) instead of ({right.X:0.00}, {right.Y:0.00})");
            }
        }
    }

    /// <summary>A place in the picture, mm, as the drive has them.</summary>
    public sealed record Place(string What, double X, double Y);
}
