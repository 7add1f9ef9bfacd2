using System.Text;
using System.Xml;

namespace MarineService.Reports.Internal;

/// <summary>Text that people wrote, made fit to stand in XML and HTML: what these cannot hold is shown as the replacement character.</summary>
internal static class PlainText
{
    internal static string Of(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (IsPair(text, i))
            {
                i++;
            }
            else if (!XmlConvert.IsXmlChar(text[i]))
            {
                return Replaced(text);
            }
        }

        return text;
    }

    private static string Replaced(string text)
    {
        StringBuilder kept = new(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            if (IsPair(text, i))
            {
                kept.Append(text[i]).Append(text[++i]);
            }
            else
            {
                kept.Append(XmlConvert.IsXmlChar(text[i]) ? text[i] : '\uFFFD');
            }
        }

        return kept.ToString();
    }

    private static bool IsPair(string text, int index) => index + 1 < text.Length && char.IsSurrogatePair(text[index], text[index + 1]);
}
