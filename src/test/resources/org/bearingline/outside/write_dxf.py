"""Writes one DXF file with every entity that is a line, and where ezdxf says its points are.

write_dxf.py VERSION DRAWING POINTS: POINTS gets one polyline a line, x and y in turn.
"""
import math
import sys

import ezdxf
from ezdxf.math import OCS, Vec3

version, drawing, points = sys.argv[1:]
document = ezdxf.new(version)
document.header["$INSUNITS"] = 4
space = document.modelspace()
BELOW = (0, 0, -1)


def straight_and_round(layout, dx):
    layout.add_line((dx + 0, 0), (dx + 37.25, 12.5))
    layout.add_circle((dx + 60, 10), 9.75)
    layout.add_arc((dx + 90, 10), 8.5, 200, 35)
    layout.add_arc((dx - 120, 10), 6.25, 10, 250, dxfattribs={"extrusion": BELOW})
    layout.add_circle((dx - 145, 10), 5, dxfattribs={"extrusion": BELOW})
    bulged = [
        (dx + 0, 40, 0.4), (dx + 30, 40, -0.3), (dx + 45, 55, 0), (dx + 30, 75, 1), (dx + 5, 70, 2.5)]
    layout.add_polyline2d(bulged, format="xyb", close=True)
    layout.add_polyline2d(
        [(-x, y, b) for x, y, b in bulged[:4]], format="xyb", dxfattribs={"extrusion": BELOW})
    layout.add_polyline3d([(dx + 60, 40, 0), (dx + 70, 60, 0), (dx + 80, 40, 0)])


def curved(layout, dx):
    layout.add_ellipse((dx + 20, 120), (25, 10), 0.4, 0, math.tau)
    layout.add_ellipse((dx + 80, 120), (0, 18), 0.55, 0.5, 4)
    layout.add_ellipse((dx + 120, 120), (15, 5), 0.5, 1, 5, dxfattribs={"extrusion": BELOW})
    bulged = [(dx + 0, 160, 0.4), (dx + 30, 160, -0.3), (dx + 45, 175, 0.0), (dx + 10, 190, 0.2)]
    layout.add_lwpolyline(bulged, format="xyb", close=True)
    layout.add_lwpolyline(
        [(-x, y, b) for x, y, b in bulged], format="xyb", dxfattribs={"extrusion": BELOW})
    control = [(dx + x, 200 + y) for x, y in
               [(0, 0), (10, 30), (30, 35), (45, 5), (60, -10), (80, 20), (95, 25)]]
    for degree in (2, 3, 5):
        layout.add_open_spline(control, degree=degree)
    layout.add_rational_spline(
        [(x, y + 60) for x, y in control], weights=[1, 2, 0.5, 3, 1, 1, 2], degree=3)
    layout.add_spline().set_closed([(x, y + 120, 0) for x, y in control], degree=3)
    # A quarter of a circle as a rational quadratic (Piegl and Tiller, The NURBS Book, chapter 7).
    layout.add_rational_spline(
        [(dx + 150, 200), (dx + 150, 220), (dx + 130, 220)], weights=[1, math.sqrt(0.5), 1],
        degree=2)
    layout.add_cad_spline_control_frame([(x, y + 180) for x, y in control])


straight_and_round(space, 0)
block = document.blocks.new("GROUP", base_point=(3, 4))
straight_and_round(block, 0)
if version != "R12":
    curved(space, 0)
    curved(block, 0)
outer = document.blocks.new("OUTER")
outer.add_blockref("GROUP", (10, 0), dxfattribs={"rotation": 15})
outer.add_line((0, 0), (5, 5))
space.add_blockref("GROUP", (500, 0))
space.add_blockref("GROUP", (1000, 50), dxfattribs={"rotation": 33, "xscale": 2, "yscale": 2})
space.add_blockref("GROUP", (1700, 50), dxfattribs={"rotation": 70, "xscale": -1.5, "yscale": 1.5})
space.add_blockref("OUTER", (2600, 0), dxfattribs={"xscale": 0.5, "yscale": 0.5})
space.add_blockref("GROUP", (-3600, 0), dxfattribs={"extrusion": BELOW, "rotation": 20})
if version != "R12":
    space.add_blockref("GROUP", (4600, 0), dxfattribs={"xscale": 1.5, "yscale": 0.5, "rotation": 25})
space.add_blockref("OUTER", (5600, 0), dxfattribs={
    "row_count": 2, "column_count": 3, "row_spacing": 600, "column_spacing": 500, "rotation": 10})
space.add_text("words", dxfattribs={"insert": (0, -20)})
space.add_point((0, -30))
space.add_3dface([(0, -40), (10, -40), (10, -50), (0, -50)])
document.layers.new("SHUT").off()
space.add_line((0, -60), (10, -60), dxfattribs={"layer": "SHUT"})
document.saveas(drawing)

FINE = 1e-3


def polylines(entity):
    kind = entity.dxftype()
    if kind == "INSERT":
        copies = entity.multi_insert() if entity.mcount > 1 else [entity]
        for copy in copies:
            for inner in copy.virtual_entities():
                yield from polylines(inner)
    elif kind in ("LWPOLYLINE", "POLYLINE"):
        for inner in entity.virtual_entities():
            yield from polylines(inner)
    elif kind == "LINE":
        yield [entity.dxf.start, entity.dxf.end]
    elif kind in ("ARC", "CIRCLE", "ELLIPSE"):
        yield list(entity.flattening(FINE))
    elif kind == "SPLINE":
        yield list(entity.flattening(FINE, segments=16))


with open(points, "w") as out:
    for entity in ezdxf.readfile(drawing).modelspace():
        if entity.dxf.layer != "SHUT":
            for line in polylines(entity):
                out.write(" ".join(f"{p.x!r} {p.y!r}" for p in map(Vec3, line)) + "\n")
