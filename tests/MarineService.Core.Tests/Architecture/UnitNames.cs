using System.Reflection;
using System.Text;

namespace MarineService.Core.Tests.Architecture;

/// <summary>A public double says its unit in its name, or that it has none.</summary>
internal static class UnitNames
{
    private static readonly HashSet<string> LastWords = new(StringComparer.OrdinalIgnoreCase)
    {
        // No unit.
        "Ratio", "Fraction",

        // Length, area, angle.
        "Mm", "Millimeters", "Degree", "M", "Meters", "Mm2", "Rad", "Radians", "Deg", "Degrees",

        // Time and turning.
        "Hours", "Hour", "Minutes", "Minute", "Seconds", "Second", "Days", "Day", "Months", "Month", "Years", "Year", "Rpm", "Hz", "Hertz",

        // Fluids and heat.
        "Liters", "Milliliters", "Celsius", "Kelvins", "Kelvin", "Centistokes", "Centipoises", "Kilograms", "Grams",

        // Force, pressure, power.
        "N", "Newtons", "Nm", "Kpa", "Kilopascals", "Kw", "Kilowatts", "Kwh", "Volts", "Amperes",
    };

    internal static IEnumerable<string> DoublesWithoutAUnit(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible
        from named in Doubles(type)
        where !EndsWithUnit(named.Name)
        select $"{Library.Describe(named.Member)}: '{named.Name}' is a double; end its name with its unit, Ratio or Fraction";

    internal static bool EndsWithUnit(string name) => LastWords.Contains(Words(name)[^1]) || LastWords.Contains(name);

    private static IEnumerable<(MemberInfo Member, string Name)> Doubles(Type type)
    {
        foreach (PropertyInfo property in Library.PublicProperties(type).Where(property => IsDouble(property.PropertyType)))
        {
            // A value with its FigureUnit beside it carries its unit as data.
            if (!type.GetProperties().Any(other => other.PropertyType == typeof(FigureUnit)))
            {
                yield return (property, property.Name);
            }
        }

        foreach (MethodBase method in Library.PublicMethods(type))
        {
            ParameterInfo[] parameters = method.GetParameters();
            if (!parameters.Any(other => other.ParameterType == typeof(FigureUnit)))
            {
                foreach (ParameterInfo parameter in parameters.Where(parameter => IsDouble(parameter.ParameterType)))
                {
                    yield return (method, parameter.Name!);
                }
            }

            if (method is MethodInfo { ReturnType: Type result } && IsDouble(result))
            {
                yield return (method, method.Name);
            }
        }
    }

    private static bool IsDouble(Type type) => StyleRules.Contained(type).Contains(typeof(double)) && !typeof(Delegate).IsAssignableFrom(type);

    /// <summary>"wrapRad" is "wrap", "Rad"; a digit belongs to the word before it.</summary>
    private static List<string> Words(string name)
    {
        List<string> words = [];
        StringBuilder word = new();
        foreach (char letter in name)
        {
            if (char.IsUpper(letter) && word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }

            word.Append(letter);
        }

        words.Add(word.ToString());
        return words;
    }
}
