using System.Globalization;

namespace MarineService.Core.Tests.Root;

/// <summary>Runs something while the thread speaks another language.</summary>
internal static class InCulture
{
    internal static T Run<T>(string name, Func<T> work)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        try
        {
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
