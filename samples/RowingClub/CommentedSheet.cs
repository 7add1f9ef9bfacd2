using System.Text;
using System.Text.RegularExpressions;
using MarineService.Core.Exchange;
using MarineService.Core.Specifications;

namespace RowingClub;

/// <summary>A boat's data sheet with words beside it for the one who will write it further.</summary>
internal static partial class CommentedSheet
{
    private static readonly Dictionary<string, string[]> Comments = new(StringComparer.Ordinal)
    {
        ["format"] = ["A member that is missing is not known; nothing is guessed. Comments may stay: this program passes over them."],
        ["boat"] = ["kept: afloat, on-trailer or ashore. water: fresh, brackish or salt. seacock: true or false."],
        ["engines"] = ["One or more; the log names an engine by its id, and main when there is one."],
        ["engine"] = ["fuel: petrol or diesel. cooling: raw-water or fresh-water. rawWaterPump: belt or gear."],
        ["tasks"] =
        [
            "What is done when: hours or months, whichever comes first.",
            "A source of common-practice is nobody's figure in particular. Put in your engine's manual and say so:",
            "\"source\": { \"standing\": \"published\", \"document\": \"Owner's manual\", \"clause\": \"page 42\" }",
        ],
        ["sump"] = ["With these three the program says how much more may be poured."],
    };

    internal static string Of(BoatSpecification boat)
    {
        HashSet<string> said = new(StringComparer.Ordinal);
        StringBuilder text = new();
        foreach (string line in BoatSpecificationJson.ToText(boat).Split('\n'))
        {
            Match member = Member().Match(line);
            if (member.Success && Comments.TryGetValue(member.Groups["name"].Value, out string[]? comment) && said.Add(member.Groups["name"].Value))
            {
                foreach (string words in comment)
                {
                    text.Append(member.Groups["indent"].Value).Append("// ").Append(words).Append('\n');
                }
            }

            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    [GeneratedRegex("""^(?<indent> *)"(?<name>[a-zA-Z]+)": """, RegexOptions.CultureInvariant)]
    private static partial Regex Member();
}
