using System.Xml.Linq;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <content>What to take along, what of it to buy, and what comes off and has to go back on.</content>
internal sealed partial class ServiceSheetParts
{
    private XElement Kit() => SheetFrame.Section(
        "kit",
        "Take along",
        Parts(),
        _card.Kit.Filters.Count == 0 ? null : new[] { Html.Tag("h3", "Filters"), Html.Tag("ul", _card.Kit.Filters.Select(Filter)) },
        Ticks("Used up by the steps", _card.Consumables),
        Ticks("Tools", _card.Tools.Select(tool => tool.ToString())),
        Html.Tag("p", Html.Class("quiet"), "Old and new part side by side before the old one comes off."));

    private object Parts()
    {
        JobKit kit = _card.Kit;
        if (!kit.List.IsKnown)
        {
            return Html.Tag("p", SheetFrame.Missing(kit.List.Missing));
        }

        return new object?[]
        {
            SheetFrame.Table("parts", ["Part", "Amount", "Where from", "For"], kit.List.Value.Lines.Select(Part)),
            kit.Purchases.Count < 2 ? null : Html.Tag("p", "To buy in all: ", kit.Price.IsKnown ? FormattableString.Invariant($"{kit.Price.Value:0.00##}.") : SheetFrame.Missing(kit.Price.Missing)),
        };
    }

    private XElement Part(KitLine line)
    {
        PartPurchase? purchase = _card.Kit.Purchases.FirstOrDefault(one => one.Line == line);
        return SheetFrame.Row(
            SheetFrame.Head(SheetFrame.Tick(Html.Words(line.Part.Title), " ", Html.Tag("span", Html.Class("quiet"), Html.Words(line.Part.Number)))),
            SheetFrame.Cell(Amount(line.Total, line.Part)),
            SheetFrame.Cell(
                line.FromShelf > 0 ? Html.Tag("p", $"{Amount(line.FromShelf, line.Part)} off the shelf") : null,
                line.ToGather > 0 ? Html.Tag("p", $"{Amount(line.ToGather, line.Part)} to gather") : null,
                purchase is null ? null : Html.Tag(
                    "p",
                    $"{Amount(line.ToBuy, line.Part)} to buy: ",
                    purchase.Packs.IsKnown ? Html.Words(purchase.Packs.Value.ToString()) : SheetFrame.Missing(purchase.Packs.Missing))),
            SheetFrame.Cell(line.WantedBy.SelectMany((task, i) => new object[] { i == 0 ? "" : ", ", Html.Words(task) })));
    }

    private static string Amount(decimal amount, ServicePart part) =>
        FormattableString.Invariant($"{amount:0.###}{(part.Unit is null ? "" : " " + PlainText.Of(part.Unit))}");

    private static XElement Filter(FilterBase one) => Html.Tag(
        "li",
        one.Comparison.IsKnown ? Html.Words(one.Comparison.Value.ToString()) : SheetFrame.Missing(one.Comparison.Missing),
        one.Need.MayBePrefilled ? ". May be filled before it goes on; what goes in counts as poured." : ". Not filled before it goes on.");

    // Every screw that is off is counted, and every one that is back: what is astray lies where it does harm.
    private XElement Loose()
    {
        JobKit kit = _card.Kit;
        object content = !kit.ComesOff.IsKnown ? Html.Tag("p", SheetFrame.Missing(kit.ComesOff.Missing), " Count and write down what comes off.")
            : kit.Tally.IsZero ? Html.Tag("p", "Nothing that is counted comes off.")
            : SheetFrame.Table("loose", ["What", "By the card", "Counted off", "Back on"], kit.Tally.Open.Select(count => SheetFrame.Row(
                SheetFrame.Head(Html.Words(count.Part.Name), " ", Html.Tag("span", Html.Class("quiet"), Html.Words(count.Part.Place))),
                SheetFrame.Cell(FormattableString.Invariant($"{count.Off}")),
                SheetFrame.Cell(SheetFrame.Write("", "write-short")),
                SheetFrame.Cell(SheetFrame.Tick("all back"), " ", SheetFrame.Write("", "write-short")))));
        return SheetFrame.Section("loose", "Comes off: count it off, count it back on", content);
    }

    private static IEnumerable<XElement> Ticks(string heading, IEnumerable<string> items) =>
    [
        Html.Tag("h3", heading),
        Html.Tag("div", Html.Class("columns"), items.Select(item => Html.Tag("p", SheetFrame.Tick(Html.Words(item))))),
    ];
}
