"""Reads an SVG file by the grammar and the arc formulas of SVG 1.1 (appendix F.6.5) and prints, for
each stroked path or circle of each group, its length and points along it, in user units."""
import math
import re
import sys
import xml.etree.ElementTree as ET

NS = "{http://www.w3.org/2000/svg}"
STEPS = 24


def arc(x1, y1, r, large, sweep, x2, y2):
    """Centre, start angle and signed sweep of a circular arc given by its ends."""
    dx, dy = (x1 - x2) / 2, (y1 - y2) / 2
    half2 = dx * dx + dy * dy
    r = max(r, math.sqrt(half2))
    root = math.sqrt(max(0.0, (r * r - half2) / half2))
    if large == sweep:
        root = -root
    cx = root * dy + (x1 + x2) / 2
    cy = -root * dx + (y1 + y2) / 2
    a = math.atan2(y1 - cy, x1 - cx)
    b = math.atan2(y2 - cy, x2 - cx)
    turn = b - a
    if sweep and turn < 0:
        turn += 2 * math.pi
    if not sweep and turn > 0:
        turn -= 2 * math.pi
    return cx, cy, r, a, turn


def walk(d):
    """Length of a path and points along it."""
    tokens = re.findall(r"[MLAZ]|-?[0-9.]+(?:e-?[0-9]+)?", d)
    i, x, y, start, length, points = 0, 0.0, 0.0, None, 0.0, []
    command = None
    while i < len(tokens):
        if tokens[i].isalpha():
            command = tokens[i]
            i += 1
        if command == "Z":
            length += math.hypot(start[0] - x, start[1] - y)
            x, y = start
            points.append(start)
            continue
        if command == "A":
            rx, ry, turn, large, sweep = (float(t) for t in tokens[i : i + 5])
            assert rx == ry and turn == 0
            i += 5
        nx, ny = float(tokens[i]), float(tokens[i + 1])
        i += 2
        if command == "M":
            start = (nx, ny)
        elif command == "L":
            length += math.hypot(nx - x, ny - y)
        elif command == "A":
            cx, cy, r, a, turn = arc(x, y, rx, large, sweep, nx, ny)
            length += r * abs(turn)
            for k in range(1, STEPS):
                t = a + turn * k / STEPS
                points.append((cx + r * math.cos(t), cy + r * math.sin(t)))
        points.append((nx, ny))
        x, y = nx, ny
    return length, points


root = ET.parse(sys.argv[1]).getroot()
print("size", root.get("width"), root.get("height"), root.get("viewBox"))
for group in root.findall(NS + "g"):
    print("group", group.get("id"), group.find(NS + "title").text)
    for e in group.iter():
        if e.get("stroke") == "none":
            continue
        if e.tag == NS + "path":
            length, points = walk(e.get("d"))
        elif e.tag == NS + "circle":
            cx, cy, r = (float(e.get(k)) for k in ("cx", "cy", "r"))
            length = 2 * math.pi * r
            turns = [2 * math.pi * k / STEPS for k in range(STEPS)]
            points = [(cx + r * math.cos(t), cy + r * math.sin(t)) for t in turns]
        else:
            if e.get("aria-label"):
                print("words", group.get("id"), e.get("aria-label"))
            continue
        flat = " ".join(f"{x!r} {y!r}" for x, y in points)
        print("trace", group.get("id"), repr(length), flat)
