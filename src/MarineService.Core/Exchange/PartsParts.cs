using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <summary>What was read of a parts sheet so far; its members come in any order.</summary>
internal sealed class PartsParts
{
    private readonly Dictionary<string, ServicePart?> _byNumber = new(StringComparer.Ordinal);
    private readonly List<ServicePart> _catalogue = [];
    private readonly List<PartOffers> _offers = [];
    private readonly List<TaskKit> _kits = [];
    private readonly List<TaskLooseParts> _off = [];
    private bool _hasNamelessPart;

    /// <summary>The tasks in the order of the document, null where one could not be read.</summary>
    internal List<string?> TaskIds { get; } = [];

    internal List<KitItem> Spares { get; } = [];

    internal List<FilterBase> Bases { get; } = [];

    /// <summary>Every part that something names, with its place, and whether it is a companion there.</summary>
    internal List<(string Place, KitItem Item, bool IsCompanion)> Named { get; } = [];

    /// <summary>What was said first of each loose part by its name and place.</summary>
    internal Dictionary<(string Name, string Place), LoosePart> Loose { get; } = [];

    internal bool Knows(string number) => _byNumber.ContainsKey(number);

    /// <summary>Where, below a part's place, the part is named as its companion; null when it is not.</summary>
    internal string? PlaceOfCompanion(string place, string number)
    {
        for (int i = Named.Count - 1; i >= 0 && Named[i].Place.StartsWith(place + "/", StringComparison.Ordinal); i--)
        {
            if (Named[i].Item.Part == number)
            {
                return Named[i].Place.Substring(place.Length);
            }
        }

        return null;
    }

    internal void AddPart(string? number, ServicePart? part, List<PackOffer> packs)
    {
        _hasNamelessPart |= number is null;
        if (number is not null && !Knows(number))
        {
            _byNumber.Add(number, part);
        }

        if (part is not null)
        {
            _catalogue.Add(part);
            if (packs.Count > 0)
            {
                _offers.Add(PartOffers.Of(part.Number, [.. packs]));
            }
        }
    }

    internal void AddTask(string task, List<KitItem>? takes, List<LooseItem>? off)
    {
        if (takes is not null)
        {
            _kits.Add(TaskKit.Of(task, [.. takes]));
        }

        if (off is not null)
        {
            _off.Add(TaskLooseParts.Of(task, [.. off]));
        }
    }

    /// <summary>Notes what names a part that the catalogue does not know, breaks a whole piece, or has companions where it is one itself.</summary>
    internal void CheckReferences(ref JsonCursor json)
    {
        foreach ((string place, KitItem item, bool isCompanion) in Named)
        {
            if (!_byNumber.TryGetValue(item.Part, out ServicePart? part))
            {
                // A part whose number could not be read may be the one that is meant.
                if (!_hasNamelessPart)
                {
                    json.NoteMeaning(place + "/part", $"'{item.Part}'", "the number of a part of the catalogue");
                }
            }
            else if (part is not null && isCompanion && part.Companions.Count > 0)
            {
                json.NoteMeaning(place + "/part", $"'{item.Part}'", "a part that has no companions of its own");
            }
            else if (part is not null && PartsCatalogue.IsBroken(part, item))
            {
                json.NoteMeaning(place + "/quantity", FormattableString.Invariant($"{item.Quantity}"), "a whole number of pieces");
            }
        }
    }

    /// <summary>The sheet, when there was no fault.</summary>
    internal PartsSheet ToSheet() => PartsSheet.Of(PartsCatalogue.OfChecked(_catalogue.AsReadOnly()))
        .With([.. _kits]).With([.. _off]).With([.. _offers]).With([.. Bases]).WithSparesAboard([.. Spares]);
}
