using System.Text;
using System.Xml.Linq;
using MarineService.Core.Internal;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>
/// A page to read and to print: one HTML file that holds all it needs, without script, and asks nothing of any network.
/// The same values give the same bytes, on any machine and in any culture.
/// </summary>
public sealed class Sheet
{
    private readonly XElement _html;

    internal Sheet(string name, string title, XElement html) => (Name, Title, _html) = (name, title, html);

    /// <summary>What kind of sheet it is, in small letters and dashes; fit for a file's name.</summary>
    public string Name { get; }

    /// <summary>What it is about, in a few words.</summary>
    public string Title { get; }

    /// <summary>The sheet as the text of an HTML file.</summary>
    /// <returns>The whole file; lines end in a line feed.</returns>
    public string ToHtml() => HtmlWriter.Document(_html);

    /// <summary>Writes the sheet as an HTML file in UTF-8.</summary>
    /// <param name="stream">Where to write; left open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public void WriteTo(Stream stream)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(ToHtml());
        Guard.NotNull(stream).Write(bytes, 0, bytes.Length);
    }

    /// <summary>Title of the sheet.</summary>
    /// <returns><see cref="Title"/>.</returns>
    public override string ToString() => Title;
}
