using System.Text;

namespace MarineService.Core.Internal;

/// <summary>Sentences with placeholders in braces, each the name of a figure: "wrap is {wrap}".</summary>
internal static class MessageTemplate
{
    internal static string Fill(string template, IReadOnlyList<Figure> figures, DisplayUnits units)
    {
        StringBuilder text = new(template);
        foreach (Figure figure in figures)
        {
            text.Replace("{" + figure.Name + "}", figure.ToString(units));
        }

        return text.ToString();
    }
}
