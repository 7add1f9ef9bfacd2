using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace MarineService.Reports.Browser;

/// <summary>What stands on each page of a PDF, read by poppler: a reader that knows nothing of the browser.</summary>
internal sealed partial class PrintedPages
{
    private readonly string _file;

    private PrintedPages(string file, IReadOnlyList<string> pages, double widthMm, double heightMm) => (_file, Pages, WidthMm, HeightMm) = (file, pages, widthMm, heightMm);

    /// <summary>The text of each page, bare: see <see cref="Bare"/>.</summary>
    internal IReadOnlyList<string> Pages { get; }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    internal static PrintedPages Of(string file)
    {
        string[] size = Run("pdfinfo", file).Split('\n').Single(line => line.StartsWith("Page size:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new(
            file,
            [.. Run("pdftotext", "-raw", "-enc", "UTF-8", file, "-").TrimEnd('\f').Split('\f').Select(Bare)],
            Millimeters(size[2]),
            Millimeters(size[4]));
    }

    /// <summary>From the left edge of the paper, mm, where a page's words begin and end: what is cut at the side still says where it would have stood.</summary>
    internal (double LeftMm, double RightMm) TextAcross(int page)
    {
        string number = (page + 1).ToString(CultureInfo.InvariantCulture);
        double[][] words = [.. Word().Matches(Run("pdftotext", "-bbox", "-f", number, "-l", number, _file, "-")).Select(word => new[] { Millimeters(word.Groups[1].Value), Millimeters(word.Groups[2].Value) })];
        return (words.Min(word => word[0]), words.Max(word => word[1]));
    }

    /// <summary>Letters and figures only: how lines were broken, hyphens at their ends, and joined letters say nothing of what stands there.</summary>
    internal static string Bare(string text) => string.Concat(text.Normalize(NormalizationForm.FormKC).Where(char.IsLetterOrDigit));

    [GeneratedRegex("<word xMin=\"([-0-9.]+)\" yMin=\"[-0-9.]+\" xMax=\"([-0-9.]+)\"")]
    private static partial Regex Word();

    private static double Millimeters(string points) => double.Parse(points, CultureInfo.InvariantCulture) * 25.4 / 72;

    private static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, StandardOutputEncoding = Encoding.UTF8 })!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }
}
