using System.Globalization;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>Asks the few things that a plan cannot do without, and makes a boat and a log of the answers.</summary>
/// <remarks>Enter means not known, which the data sheet then says too. What is not understood is asked again.</remarks>
internal sealed class NewBoatDialog(TextReader answers, Page page, LocalDate today)
{
    private bool _ended;

    internal (BoatSpecification Boat, ServiceLog Log) Ask()
    {
        page.Line("Enter alone: not known. Nothing is guessed; the file can be written further by hand.");
        string name = Required("The boat's name", "boat");
        string designation = Required("The engine's designation, as on its plate", "engine");
        Fuel fuel = Word<Fuel>("Fuel: petrol or diesel");
        CoolingKind cooling = Word<CoolingKind>("Cooling: raw-water or fresh-water");
        RawWaterPumpDrive drive = Word<RawWaterPumpDrive>("What drives the raw-water pump: belt or gear");
        KeptWhere kept = Word<KeptWhere>("Kept: afloat, on-trailer or ashore");
        bool? seacock = Asked("Has it a seacock: yes or no", text => text is "yes" or "no" ? (true, text == "yes") : default((bool, bool?)));
        ServiceInterval? own = Asked("Engine oil is changed every (hours and months, as in 100 12)", text => Interval(text) is ServiceInterval interval ? (true, interval) : default);
        Sump? sump = AskSump();

        EngineSpecification engine = EngineSpecification.Of(Engine.Of(designation, fuel, cooling, pumpDrive: drive)).With([.. Tasks(fuel, own)]);
        engine = sump is null ? engine : engine.WithSump(sump);
        BoatSpecification boat = BoatSpecification.Of(Boat.Of(name, kept, hasSeacock: seacock)).WithEngine(LogEntry.MainEngine, engine);
        return (boat, AskLog());
    }

    // What is done to every such engine; the figures are common practice and say so, except the reader's own.
    private static IEnumerable<ServiceTask> Tasks(Fuel fuel, ServiceInterval? oil)
    {
        ServiceInterval yearly = ServiceInterval.FirstOf(EngineHours.FromHours(100m), months: 12);
        ServiceTask change = ServiceTask.Replace("engine-oil", oil ?? yearly).WithTitle("Engine oil and filter").WithLayUpRule(LayUpRule.PullForward);
        yield return oil is null ? change.WithSource(Citation.CommonPractice) : change;
        yield return ServiceTask.Inspect("impeller-inspect", yearly).WithTitle("Raw-water pump impeller: inspect").WithSource(Citation.CommonPractice).IfFailedDo("impeller-replace");
        yield return ServiceTask.Replace("impeller-replace", ServiceInterval.OfMonths(24)).WithTitle("Raw-water pump impeller: replace").WithSource(Citation.CommonPractice);
        yield return ServiceTask.Replace("fuel-filter", yearly).WithTitle(fuel == Fuel.Diesel ? "Fuel filters, bleed" : "Fuel filter").WithSource(Citation.CommonPractice);
        yield return ServiceTask.Inspect("belt-inspect", yearly).WithTitle("Belts: inspect").WithSource(Citation.CommonPractice);
        yield return ServiceTask.AtLayUp("raw-water-drain", TaskAction.Clean).WithTitle("Drain or protect the raw-water side").WithSource(Citation.CommonPractice);
    }

    private Sump? AskSump()
    {
        Volume? fill = Asked("Engine oil with a new filter [L]", Liters);
        if (fill is null)
        {
            return null;
        }

        Volume? filter = Asked("The filter alone holds [L], 0 for a strainer", Liters);
        Volume? range = filter is null ? null : Asked("From the lower to the upper mark of the dipstick [L]", Liters);
        return filter is Volume known && range is Volume marks ? Sump.Holding(fill.Value, known, Dipstick.WithRange(marks)) : null;
    }

    private ServiceLog AskLog()
    {
        List<LogEntry> entries = [];
        EngineHours? dial = Asked("The hour meter's dial shows today [h]", Hours);
        if (dial is EngineHours now)
        {
            entries.Add(LogEntry.Of(MeterReading.Of(today, now)));
        }

        LocalDate? changed = Asked(
            "The day of the last oil change (YYYY-MM-DD)",
            text => LocalDatePattern.Iso.Parse(text) is { Success: true } date && date.Value.Year >= 1900 && date.Value <= today ? (true, date.Value) : default((bool, LocalDate?)));
        if (changed is LocalDate day)
        {
            EngineHours? then = Asked("The dial then [h]", Hours);
            entries.Add(LogEntry.Of(then is EngineHours hours ? Completion.Of("engine-oil", day, hours) : Completion.Of("engine-oil", day)));
        }

        return ServiceLog.Of(entries);
    }

    private string Required(string question, string fallback)
    {
        string? text = Asked(question, answer => (true, answer));
        return text ?? (_ended ? fallback : Required(question, fallback));
    }

    private T Word<T>(string question)
        where T : struct, Enum =>
        Asked(question, text => Enum.TryParse(text.Replace("-", "", StringComparison.Ordinal), ignoreCase: true, out T value) && Enum.IsDefined(value) && !int.TryParse(text, out _) ? (true, value) : default((bool, T?))) ?? default;

    private T? Asked<T>(string question, Func<string, (bool Understood, T? Value)> read)
    {
        while (true)
        {
            page.Line($"{question}:");
            string? line = _ended ? null : answers.ReadLine();
            _ended |= line is null;
            string text = (line ?? "").Trim();
            if (text.Length == 0)
            {
                return default;
            }

            (bool understood, T? value) = read(text);
            if (understood)
            {
                return value;
            }

            page.Line($"  '{text}' was not understood.");
        }
    }

    private static (bool Understood, Volume? Value) Liters(string text) =>
        Number(text.TrimEnd('L', 'l', ' ')) is decimal liters && liters is >= 0 and <= 1000 ? (true, Volume.FromLiters((double)liters)) : default;

    private static (bool Understood, EngineHours? Value) Hours(string text) =>
        Number(text.TrimEnd('h', ' ')) is decimal hours && hours is >= 0 and <= 1_000_000 && decimal.Round(hours, 3) == hours ? (true, EngineHours.FromHours(hours)) : default;

    private static ServiceInterval? Interval(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 2
            && Number(words[0]) is decimal hours && hours is >= 0.001m and <= 100_000m && decimal.Round(hours, 3) == hours
            && int.TryParse(words[1], NumberStyles.None, CultureInfo.InvariantCulture, out int months) && months is >= 1 and <= 1200
            ? ServiceInterval.FirstOf(EngineHours.FromHours(hours), months)
            : null;
    }

    private static decimal? Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value) ? value : null;
}
