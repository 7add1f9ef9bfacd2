#!/usr/bin/env bash
# Makes a new console project in a new folder, adds the package from a folder that holds it, and runs the readme's first C# block,
# unchanged; what it prints must be the text block below it. Usage: build/readme-consumer.sh FOLDER-WITH-NUPKG
set -euo pipefail
cd "$(dirname "$0")/.."
feed=$(realpath "$1")
readme=$(realpath README.md)
version=$(basename "$feed"/MarineService.Core.*.nupkg .nupkg | sed 's/^MarineService\.Core\.//')
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

block() { # language: the first such block of the readme
    awk -v fence="\`\`\`$1" '$0 == fence {inside = ++n == 1; next} /^```/ {inside = 0} inside' "$readme"
}

mkdir "$work/Stranger"
cd "$work/Stranger"
dotnet new console --framework net10.0 --no-restore > /dev/null
# Only so that no copy of this version that an earlier run left on this machine is taken for the one in the folder.
export NUGET_PACKAGES="$work/packages"
echo '<configuration />' > nuget.config
dotnet nuget add source "$feed" --name packed --configfile nuget.config > /dev/null
dotnet add package MarineService.Core --version "$version" > add.log || { cat add.log >&2; exit 1; }
block csharp > Program.cs
diff <(block text) <(dotnet run) >&2 || { echo "the readme's first block prints something else than the readme says" >&2; exit 1; }
echo "a new console project runs the readme's first block"
