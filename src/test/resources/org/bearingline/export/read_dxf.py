"""Reads a DXF file with ezdxf and prints what it finds, one fact a line."""
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import bulge_radius
from ezdxf.tools.text import plain_text

doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()
print("version", doc.dxfversion)
print("errors", len(audit.errors) + len(audit.fixes))
for problem in audit.errors + audit.fixes:
    print("error", problem.message)
print("units", doc.header["$INSUNITS"], doc.header["$MEASUREMENT"])
for layer in doc.layers:
    print("layer", layer.dxf.name, layer.dxf.linetype, layer.dxf.lineweight)
for e in doc.modelspace():
    layer = e.dxf.layer
    kind = e.dxftype()
    print("entity", layer, kind)
    if kind == "LWPOLYLINE":
        points = e.get_points("xyb")
        last = len(points) if e.closed else len(points) - 1
        print("closed", layer, e.closed)
        for i in range(last):
            x, y, bulge = points[i]
            nx, ny, _ = points[(i + 1) % len(points)]
            if bulge:
                radius = bulge_radius((x, y), (nx, ny), bulge)
                print("arc", layer, repr(float(radius)), repr(bulge), repr(x), repr(y))
            else:
                print("line", layer, repr(x), repr(y), repr(nx), repr(ny))
    elif kind == "CIRCLE":
        print("circle", layer, repr(e.dxf.radius), repr(e.dxf.center.x), repr(e.dxf.center.y))
    elif kind == "ARC":
        s, t = e.start_point, e.end_point
        print("single", layer, repr(e.dxf.radius), repr(s.x), repr(s.y), repr(t.x), repr(t.y))
    elif kind == "TEXT":
        print("text", layer, repr(e.dxf.height), plain_text(decode_dxf_unicode(e.dxf.text)))
