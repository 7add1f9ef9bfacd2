using System.Collections;
using System.Globalization;
using System.Reflection;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Everything that a value shows through its public properties, as one text: two values that show the same are the same.</summary>
internal static class PublicState
{
    internal static string Of(object? value) => value switch
    {
        null => "-",
        string text => $"'{text}'",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IQuantity quantity => quantity.ToString(CultureInfo.InvariantCulture) + "=" + Of((double)quantity.Value),
        IEnumerable items => "[" + string.Join(", ", items.Cast<object>().Select(Of)) + "]",
        _ when value.GetType().Assembly == typeof(Finding).Assembly && !value.GetType().IsEnum && value is not EngineHours =>
            value.GetType().Name + "{" + string.Join(", ", Shown(value).Select(property => property.Name + ": " + Of(property.GetValue(value)))) + "}",
        IFormattable known => known.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    // What is reckoned from the rest (a plan, an evidence grade, a comparison) shows nothing new.
    private static IEnumerable<PropertyInfo> Shown(object value) =>
        value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0 && property.Name is not "Plan" and not "Grade" and not "Comparison");
}
