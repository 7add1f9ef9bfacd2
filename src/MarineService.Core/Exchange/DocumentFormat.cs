using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Tells documents apart.</summary>
public static class DocumentFormat
{
    /// <summary>What a document says it is.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <returns>Its format, such as "marine-service/service-log"; not known when it does not say, or is no JSON.</returns>
    public static Answer<string> Of(ReadOnlySpan<byte> utf8)
    {
        Utf8JsonReader reader = new(Document.WithoutMark(utf8), new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth == 1 && reader.TokenType == JsonTokenType.PropertyName)
                {
                    bool isFormat = reader.ValueTextEquals("format"u8);
                    reader.Read();
                    if (isFormat && reader.TokenType == JsonTokenType.String)
                    {
                        return Answer.Known(reader.GetString()!);
                    }

                    reader.Skip();
                }
            }
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            // Not JSON, or not text: then it does not say what it is.
        }

        return Answer.NotKnown<string>("A JSON object with a member 'format'.");
    }
}
