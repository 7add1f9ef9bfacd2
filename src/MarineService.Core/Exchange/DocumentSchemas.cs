namespace MarineService.Core.Exchange;

/// <summary>The JSON Schemas (draft 2020-12) of the documents; the package also holds them as files under <c>schemas</c>.</summary>
/// <remarks>
/// They say of the shape of a document what the reader says; tests hold both against each other on thousands of altered documents.
/// What a schema cannot say the reader alone reports: ids used twice, references that lead nowhere, members that stand twice, dates in
/// the wrong order, digits that would be lost, halves of characters.
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

    /// <summary>The schema of what was seen on a belt.</summary>
    public static string BeltExamination => Read("belt-examination");

    /// <summary>The schema of the routings that the pulleys of a drive allow.</summary>
    public static string BeltRoutings => Read("belt-routings");

    /// <summary>The schema of an engine of a fleet.</summary>
    public static string FleetEngine => Read("fleet-engine");

    /// <summary>The schema of what came of an engine of a fleet.</summary>
    public static string FleetResult => Read("fleet-result");

    /// <summary>The schema of the summary of a fleet.</summary>
    public static string FleetSummary => Read("fleet-summary");

    /// <summary>The schema of the balance of an oil change.</summary>
    public static string FluidBalance => Read("fluid-balance");

    /// <summary>The schema of an impeller assessment.</summary>
    public static string ImpellerAssessment => Read("impeller-assessment");

    /// <summary>The schema of a winter plan.</summary>
    public static string LayUpPlan => Read("lay-up-plan");

    /// <summary>The schema of a visit plan.</summary>
    public static string VisitPlan => Read("visit-plan");

    /// <summary>The schema of a job card.</summary>
    public static string JobCard => Read("job-card");

    /// <summary>The schema of a report of a visit.</summary>
    public static string VisitReport => Read("visit-report");

    /// <summary>The schema of a procedure and the tasks that it does.</summary>
    public static string Procedure => Read("procedure");

    private static string Read(string name)
    {
        using Stream stream = typeof(DocumentSchemas).Assembly.GetManifestResourceStream($"{name}.schema.json")!;
        using StreamReader text = new(stream);
        return text.ReadToEnd();
    }
}
