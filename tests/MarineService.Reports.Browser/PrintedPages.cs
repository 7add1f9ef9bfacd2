using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace MarineService.Reports.Browser;

/// <summary>What stands on each page of a PDF, read by poppler: a reader that knows nothing of the browser.</summary>
internal sealed class PrintedPages
{
    private PrintedPages(IReadOnlyList<string> pages, double widthMm, double heightMm) => (Pages, WidthMm, HeightMm) = (pages, widthMm, heightMm);

    /// <summary>The text of each page, bare: see <see cref="Bare"/>.</summary>
    internal IReadOnlyList<string> Pages { get; }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    internal static PrintedPages Of(string file)
    {
        string[] size = Run("pdfinfo", file).Split('\n').Single(line => line.StartsWith("Page size:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new(
            [.. Run("pdftotext", "-raw", "-enc", "UTF-8", file, "-").TrimEnd('\f').Split('\f').Select(Bare)],
            Millimeters(size[2]),
            Millimeters(size[4]));
    }

    /// <summary>Letters and figures only: how lines were broken, hyphens at their ends, and joined letters say nothing of what stands there.</summary>
    internal static string Bare(string text) => string.Concat(text.Normalize(NormalizationForm.FormKC).Where(char.IsLetterOrDigit));

    private static double Millimeters(string points) => double.Parse(points, CultureInfo.InvariantCulture) * 25.4 / 72;

    private static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, StandardOutputEncoding = Encoding.UTF8 })!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }
}
