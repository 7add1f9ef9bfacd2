using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Engines;
using MarineService.Core.Oils;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests;
using MarineService.Reports.Charts;
using MarineService.Reports.Drawings;
using MarineService.Reports.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Tests;

/// <summary>
/// What people call pulleys and tasks never breaks out of a picture: whatever the words, it has the same elements at the same places as with
/// harmless letters that are as wide, and the words come back whole. Covers, dipsticks and oils show no word that people choose.
/// </summary>
public sealed class PictureLawTest
{
    // Attributes that hold people's words, and elements that show or say them.
    private static readonly string[] Worded = ["data-pulley", "data-from", "data-to", "data-task"];

    private static readonly string[] Refused = [",", "(", ")"];

    [Law(MaxTest = 60)]
    public Property NoName_BreaksOutOfABelt() => Prop.ForAll(HostileText.Some, word => Holds(
        Refused.Aggregate(word, (name, mark) => name.Replace(mark, "", StringComparison.Ordinal)),
        name => BeltDrawing.Of(Wrong(name)),
        name => BeltDrawing.Of(Right(name), DisplayUnits.UsCustomary)));

    [Law(MaxTest = 60)]
    public Property NoTask_BreaksOutOfVisits() => Prop.ForAll(HostileText.Some, word => Holds(word, name =>
    {
        VisitPlanner planner = VisitPlanner.From(Club.Today, 60m);
        return VisitPlanDrawing.Of(planner.LeastCost([VisitTask.Of(name, Club.Today.PlusDays(9), 1m, 1m), VisitTask.Of(name + "2", Club.Today.PlusDays(400), 1m, 1m)]).Value, planner);
    }));

    [Law(MaxTest = 60)]
    public Property NoTask_BreaksOutOfAUseChart() => Prop.ForAll(HostileText.Some, word => Holds(word, name =>
    {
        EngineSpecification engine = EngineSpecification.Named(name)
            .With(ServiceTask.Replace(name, ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)).WithTitle(name))
            .With(ServiceTask.Inspect(name + "2", ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)));
        ServiceLog log = Readings().Aggregate(
            ServiceLog.Empty.With(Completion.Of(name, new LocalDate(2026, 4, 1), EngineHours.FromHours(300m))), (all, reading) => all.With(reading));
        return UseChart.Of(log.History(engine, Club.Today), log.DueList(engine, Club.Today));
    }));

    /// <summary>Grades and categories are read, never passed on.</summary>
    [Law(MaxTest = 60)]
    public Property NoWord_IsTakenForAnOil() => Prop.ForAll(HostileText.Some, word =>
    {
        Assert.ThrowsAny<ArgumentException>(() => LabelledOil.Of(word));
        Assert.ThrowsAny<ArgumentException>(() => LabelledOil.Of("15W-40", word));
    });

    private static IEnumerable<MeterReading> Readings() =>
        from month in Enumerable.Range(4, 7) select MeterReading.Of(new LocalDate(2026, month, 1), EngineHours.FromHours(300m + (15 * (month - 4))));

    private static BeltRouting Right(string name) => Drive(name).EngineRouting.Value;

    // The pulley with this name is missed, and the belt passes it: much is said of it.
    private static BeltExamination Wrong(string name) =>
        BeltExamination.Of(Drive(name).Route($"{name}1", $"{name}3", $"{name}4"), RotationalSpeed.FromRevolutionsPerMinute(3000));

    private static BeltDrive Drive(string name) => BeltDrive.SeenFromPulleyEnd(Sense.Clockwise)
        .Grooved($"{name}1", xMm: 0, yMm: 0, effectiveDiameterMm: 170)
        .Smooth($"{name}2", xMm: -145, yMm: 5, diameterMm: 90)
        .Grooved($"{name}3", xMm: -265, yMm: 70, effectiveDiameterMm: 120)
        .Grooved($"{name}4", xMm: -215, yMm: 275, effectiveDiameterMm: 60)
        .WithTensioner(Tensioner.Automatic($"{name}2", pivotXMm: -210, pivotYMm: -30, fromDegrees: 20, toDegrees: 40))
        .RoutedAs($"{name}1", $"{name}2(back)", $"{name}3", $"{name}4")
        .Build();

    private static bool Holds(string word, params Func<string, Drawing>[] pictures) => pictures.All(draw =>
    {
        Drawing drawing = draw(word);
        XElement[] hostile = [.. Pictures.Parse(drawing).DescendantsAndSelf()];
        Assert.Equal(Pictures.Parse(draw(Harmless(word))).DescendantsAndSelf().Select(Shape), hostile.Select(Shape));
        Assert.Contains(Bare(word), Bare(string.Concat(hostile.Where(one => one.Name.LocalName == "text").Select(one => one.Value))), StringComparison.Ordinal);
        Assert.Contains(Shown(word), hostile.Single(one => one.Name.LocalName == "desc").Value, StringComparison.Ordinal);
        Assert.All(
            hostile.Attributes().Where(attribute => Worded.Contains(attribute.Name.LocalName)),
            attribute => Assert.StartsWith(PlainText.Of(word), attribute.Value, StringComparison.Ordinal));
        return true;
    });

    /// <summary>Letters as wide, that mean nothing to any reader; white space, where lines are broken, stays.</summary>
    private static string Harmless(string word)
    {
        string[] letters = ["a", "i", "A", "m", "\u6C34"];
        return string.Concat(PlainText.Of(word).EnumerateRunes().Select(rune =>
            rune.Value is ' ' or '\n' or '\t' ? rune.ToString()
            : rune.Utf16SequenceLength == 2 ? "\U0001F6A4"
            : letters.Single(letter => Lettering.Width(letter, 1) == Lettering.Width(rune.ToString(), 1))));
    }

    private static string Shape(XElement element) => string.Join(
        " ", element.Attributes().Select(attribute => Worded.Contains(attribute.Name.LocalName) ? attribute.Name.ToString() : attribute.ToString()).Prepend(element.Name.LocalName));

    // However lines were broken.
    private static string Bare(string text) => string.Concat(PlainText.Of(text).Where(letter => !char.IsWhiteSpace(letter)));

    // A reader of XML takes each end of line for a line feed.
    private static string Shown(string word) => PlainText.Of(word.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'));
}
