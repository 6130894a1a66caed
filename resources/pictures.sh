#!/bin/bash
# Take the README's pictures: FreeCAD's real window on a virtual screen, driven by pictures.py.
#   resources/pictures.sh [FOLDER]      (resources/pictures unless another is named)
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"
install "${RUN_PACKAGES[@]}" xvfb

folder=$(realpath -m "${1:-$NECKFIT_ROOT/resources/pictures}")
home=$(mktemp -d)
screen=''
trap '[[ -z $screen ]] || kill "$screen"; rm -rf "$home"' EXIT
mkdir "$home/Mod"
ln -s "$NECKFIT_ROOT" "$home/Mod/NeckFit"
# No splash, no start page, no questions: they would stand in the picture.
cat >"$home/user.cfg" <<'XML'
<?xml version="1.0" encoding="UTF-8" standalone="no" ?>
<FCParameters><FCParamGroup Name="Root"><FCParamGroup Name="BaseApp">
<FCParamGroup Name="Preferences"><FCParamGroup Name="General">
<FCText Name="AutoloadModule">PartWorkbench</FCText><FCBool Name="ShowSplasher" Value="0"/>
</FCParamGroup><FCParamGroup Name="Mod"><FCParamGroup Name="Start">
<FCBool Name="ShowOnStartup" Value="0"/><FCBool Name="FirstStart2024" Value="0"/></FCParamGroup>
</FCParamGroup><FCParamGroup Name="Addons"><FCBool Name="AutoCheck" Value="0"/>
<FCBool Name="ShownInfo" Value="1"/><FCBool Name="FirstRun" Value="0"/></FCParamGroup>
</FCParamGroup></FCParamGroup></FCParamGroup></FCParameters>
XML
exec 7>"$home/display"
Xvfb -displayfd 7 -screen 0 1280x760x24 -dpi 96 -nolisten tcp >/dev/null 2>&1 &
screen=$!
for _ in {1..100}; do
    [[ -s $home/display ]] && break
    sleep 0.1
done
[[ -s $home/display ]] || stop "Xvfb did not start."
DISPLAY=:$(<"$home/display") FREECAD_USER_HOME=$home NECKFIT_PICTURES=$folder \
    QT_QPA_PLATFORM=xcb QTWEBENGINE_DISABLE_SANDBOX=1 PYTHONPATH= \
    timeout 120 freecad "$NECKFIT_ROOT/resources/pictures.py" >"$home/log" 2>&1 ||
    { tail -n 20 "$home/log" >&2 && stop "FreeCAD took no pictures."; }
say "pictures are in $folder"
