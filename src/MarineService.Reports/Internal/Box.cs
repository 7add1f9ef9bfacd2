namespace MarineService.Reports.Internal;

/// <summary>An upright box on the page, from its left upper corner; y downwards.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    internal double CenterX => X + (Width / 2);

    internal double CenterY => Y + (Height / 2);

    internal static Box Around(double x, double y, double width, double height) => new(x - (width / 2), y - (height / 2), width, height);

    internal Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    internal bool Contains(double x, double y) => x >= X && x <= X + Width && y >= Y && y <= Y + Height;

    internal bool Contains(Box other) => Contains(other.X, other.Y) && Contains(other.X + other.Width, other.Y + other.Height);

    internal bool Meets(Box other) =>
        X < other.X + other.Width && other.X < X + Width && Y < other.Y + other.Height && other.Y < Y + Height;

    internal bool MeetsDisc(double x, double y, double radius)
    {
        double dx = x - Math.Max(X, Math.Min(x, X + Width));
        double dy = y - Math.Max(Y, Math.Min(y, Y + Height));
        return (dx * dx) + (dy * dy) < radius * radius;
    }
}
