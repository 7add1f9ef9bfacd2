namespace MarineService.Core.Exchange;

/// <summary>The JSON Schemas (draft 2020-12) of the documents; the package also holds them as files under <c>schemas</c>.</summary>
/// <remarks>
/// They say of the shape of a document what the reader says; tests hold both against each other on thousands of altered documents.
/// What a schema cannot say (ids used twice, references that lead nowhere, doubled members) the reader alone reports.
/// </remarks>
public static class DocumentSchemas
{
    /// <summary>The schema of the data sheet of an engine.</summary>
    public static string EngineSpecification => Read("engine-specification");

    /// <summary>The schema of the data sheet of a boat.</summary>
    public static string BoatSpecification => Read("boat-specification");

    /// <summary>The schema of a service log.</summary>
    public static string ServiceLog => Read("service-log");

    /// <summary>The schema of a due list.</summary>
    public static string DueList => Read("due-list");

    /// <summary>The schema of an oil selection.</summary>
    public static string OilSelection => Read("oil-selection");

    /// <summary>The schema of a winter plan.</summary>
    public static string LayUpPlan => Read("lay-up-plan");

    private static string Read(string name)
    {
        using Stream stream = typeof(DocumentSchemas).Assembly.GetManifestResourceStream($"{name}.schema.json")!;
        using StreamReader text = new(stream);
        return text.ReadToEnd();
    }
}
