using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Oils;
using MarineService.Reports.Internal;
using UnitsNet;

namespace MarineService.Reports.Sheets;

/// <content>Which oil, how much, and how the belt lies.</content>
internal sealed partial class ServiceSheetParts
{
    private XElement? Amounts() => _card.Oil is not JobOil oil ? null : SheetFrame.Section(
        "amounts",
        "Oil: which, and how much",
        SheetFrame.Table(
            "amounts",
            ["", "By the card", "Today"],
            [
                Amount("Grade", Grade(oil.Choice), "on the can:"),
                Amount("Engine and filter hold", Volume(oil.Sump, sump => sump.ServiceFill), null),
                Amount("Of it the filter", Volume(oil.Sump, sump => sump.Filter), null),
                Amount("Have ready", Volume(oil.ToHave), "on hand:"),
                Amount("First pour, then look", Volume(oil.FirstPour), "poured:"),
                Amount("Poured last time", Volume(oil.PouredLastTime), null),
            ]));

    private static XElement Amount(string what, object value, string? today) => SheetFrame.Row(
        SheetFrame.Head(what), SheetFrame.Cell(value), SheetFrame.Cell(today is null ? null : SheetFrame.Write(today)));

    private object Volume(Answer<Volume> volume) =>
        volume.IsKnown ? Words.InBoth(volume.Value, _lead) : SheetFrame.Missing(volume.Missing);

    private object Volume(Answer<Sump> sump, Func<Sump, Volume> which) =>
        sump.IsKnown ? Words.InBoth(which(sump.Value), _lead) : SheetFrame.Missing(sump.Missing);

    private object Grade(Answer<OilSelection> choice)
    {
        if (!choice.IsKnown)
        {
            return SheetFrame.Missing(choice.Missing);
        }

        OilSelection oils = choice.Value;
        return new object?[]
        {
            oils.Best.IsKnown ? Html.Tag("strong", oils.Best.Value.Designation) : SheetFrame.Missing(oils.Best.Missing),
            Html.Tag("p", Html.Words(Words.InBoth(units => oils.Explain(units).Answer, _lead)), _sources.Mark(oils.Best.IsKnown ? [oils.Best.Value.DecidedBy.Citation] : [])),
            oils.Permitted.Required.Select(required => Html.Tag("p", "The label must claim ", Html.Words(required.ToString()), ", or a category stated to cover it.")),
        };
    }

    private XElement? Belt() => !_card.MovesBelt ? null : SheetFrame.Section(
        "belt",
        "How the belt lies",
        _card.Belt.IsKnown
            ? Html.Tag("p", Html.Words(_card.Belt.Value.ToString()), ". ", Html.Words(Words.InBoth(units => _card.Belt.Value.Check().Explain(units).Answer, _lead)))
            : Html.Tag("p", SheetFrame.Missing(_card.Belt.Missing), " Draw it before it comes off."));
}
