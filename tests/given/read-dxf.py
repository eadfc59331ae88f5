"""Reads DXF files with ezdxf and prints what each holds as a line of JSON. Nothing of this project is used to read it."""

import json
import sys
from collections import Counter

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode as decoded
from ezdxf.math import area


def parts_of(layout):
    """Area of each part and its material, from the outlines of regions: outlines run left round, holes right round."""
    areas, materials = {}, {}
    for line in layout.query('LWPOLYLINE[layer=="JW-REGIONS"]'):
        data = dict(value.split("=", 1) for code, value in line.get_xdata("JAMBWRIGHT") if code == 1000)
        points = [(x, y) for x, y in line.get_points("xy")]
        signed = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1])) / 2
        assert abs(abs(signed) - area(line.vertices_in_wcs())) < 1e-6
        areas[data["part"]] = areas.get(data["part"], 0) + signed
        materials[data["part"]] = data.get("material")
    return areas, materials


def in_order(layout):
    """Viewports by their numbers: those that lie over others stand behind them in the file."""
    return sorted(layout.query("VIEWPORT"), key=lambda v: v.dxf.id)


def tell(path):
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    model = doc.modelspace()
    areas, materials = parts_of(model)
    outlines = [p for line in model.query("LWPOLYLINE") for p in line.get_points("xy")]
    print(
        json.dumps(
            {
                "version": doc.dxfversion,
                "errors": [e.message for e in audit.errors],
                "fixes": [e.message for e in audit.fixes],
                "counts": {
                    layout.name: Counter(f"{e.dxf.layer} {e.dxftype()}" for e in layout) for layout in doc.layouts
                },
                "areas": areas,
                "materials": materials,
                "sizes": [
                    {"measures": d.get_measurement(), "says": d.dxf.text, "block": d.dxf.geometry}
                    for d in model.query("DIMENSION")
                ],
                "sizeWords": [
                    [decoded(e.plain_text()) for e in doc.blocks.get(d.dxf.geometry).query("TEXT")]
                    for d in model.query("DIMENSION")
                ],
                "onPaper": [
                    {
                        "measures": d.dxf.actual_measurement,
                        "long": d.get_measurement(),
                        "times": doc.dimstyles.get(d.dxf.dimstyle).dxf.dimlfac,
                    }
                    for layout in doc.layouts
                    if layout.name != "Model"
                    for d in layout.query("DIMENSION")
                ],
                "frozen": [
                    [doc.entitydb[it].dxf.name if it in doc.entitydb else it for it in v.frozen_layers]
                    for layout in doc.layouts
                    for v in in_order(layout)
                    if v.dxf.id > 1
                ],
                "numbers": [decoded(m.plain_text()) for m in model.query("MTEXT")],
                "words": [decoded(t.plain_text()) for layout in doc.layouts for t in layout.query("TEXT")],
                "attributes": {
                    a.dxf.tag: decoded(a.plain_text())
                    for layout in doc.layouts
                    for insert in layout.query("INSERT")
                    for a in insert.attribs
                },
                "viewports": [
                    [v.dxf.width, v.dxf.height, v.dxf.view_height, v.dxf.center.x, v.dxf.center.y]
                    + list(v.dxf.view_center_point)[:2]
                    for layout in doc.layouts
                    for v in in_order(layout)
                    if v.dxf.id > 1
                ],
                "lowest": [min(p[0] for p in outlines), min(p[1] for p in outlines)] if outlines else [],
                "highest": [max(p[0] for p in outlines), max(p[1] for p in outlines)] if outlines else [],
                "layers": {
                    layer.dxf.name: [layer.dxf.lineweight, layer.dxf.linetype, layer.is_on(), layer.dxf.plot]
                    for layer in doc.layers
                },
                "linetypes": {
                    t.dxf.name: [tag.value for tag in t.pattern_tags.tags if tag.code == 49] for t in doc.linetypes
                },
                "rows": [
                    [h.dxf.pattern_name, r.angle, *r.base_point, *r.offset, *r.dash_length_items]
                    for h in model.query("HATCH")
                    if h.pattern
                    for r in h.pattern.lines
                ],
                "patterns": {
                    h.dxf.pattern_name: len(h.pattern.lines)
                    for layout in doc.layouts
                    for h in layout.query("HATCH")
                    if h.pattern
                },
            }
        )
    )


for name in sys.argv[1:]:
    tell(name)
