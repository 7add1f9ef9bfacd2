using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace MarineService.Reports.Browser;

/// <summary>What stands on each page of a PDF, read by poppler: a reader that knows nothing of the browser.</summary>
internal sealed class PrintedPages
{
    // Fine enough to see a hair line.
    private const int DotsPerInch = 100;

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

    /// <summary>From the left edge of the paper, mm, the first and the last of a page's ink: what is cut at the side has ink in the margin.</summary>
    internal (double LeftMm, double RightMm) InkAcross(int page)
    {
        string picture = Path.ChangeExtension(_file, $"{page}.ink");
        string number = (page + 1).ToString(CultureInfo.InvariantCulture);
        Run("pdftoppm", "-gray", "-r", $"{DotsPerInch}", "-f", number, "-l", number, "-singlefile", _file, picture);
        byte[] dots = File.ReadAllBytes($"{picture}.pgm");
        File.Delete($"{picture}.pgm");
        int[] head = [.. Encoding.ASCII.GetString(dots, 0, 30).Split('\n')[1].Split(' ').Select(part => int.Parse(part, CultureInfo.InvariantCulture))];
        int from = dots.Length - (head[0] * head[1]);
        int[] inked = [.. Enumerable.Range(0, head[0]).Where(x => Enumerable.Range(0, head[1]).Any(y => dots[from + (y * head[0]) + x] < 250))];
        return (inked[0] * 25.4 / DotsPerInch, (inked[^1] + 1) * 25.4 / DotsPerInch);
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
