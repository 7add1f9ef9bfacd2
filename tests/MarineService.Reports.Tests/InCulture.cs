using System.Globalization;

namespace MarineService.Reports.Tests;

/// <summary>Runs something while the thread speaks other languages.</summary>
internal static class InCulture
{
    internal static readonly string[] Five = ["de-DE", "tr-TR", "ar-SA", "th-TH", "en-US"];

    internal static IEnumerable<T> Each<T>(Func<T> work)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string name in Five)
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
                yield return work();
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
