"""Takes a picture of a scene as a camera or a scanner would; knows nothing of the program.

Reads one JSON file: ground (light 0..1), layers (grey PNG files that lie on the ground, in order,
each with its dots per mm, the mm of its lower left corner, a turn in degrees about that corner, and
either "wood": the light where it is black, or nothing: its own grey), back (nine numbers: from
straight pixels to mm), lens (Brown's first radial term, in half diagonals), size, blur (pixels),
lamp (share of light lost from left to right and to the corners), grain, noise (levels), quality
(JPEG; 0 for PNG), dpi (written into the file; 0 for none), out.
"""
import json
import sys

import numpy as np
from PIL import Image

Image.MAX_IMAGE_PIXELS = None
scene = json.load(open(sys.argv[1]))
width, height = scene["size"]
random = np.random.default_rng(int(scene.get("seed", 1)))


def light_of(srgb):
    return np.where(srgb <= 0.04045, srgb / 12.92, ((srgb + 0.055) / 1.055) ** 2.4)


def srgb_of(light):
    light = np.clip(light, 0, 1)
    return np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)


def sample(raster, x, y):
    """Bilinear; white beyond the raster. Dot centres lie half a dot in from the upper left."""
    rows, columns = raster.shape
    x0 = np.floor(x).astype(int)
    y0 = np.floor(y).astype(int)
    fx, fy = x - x0, y - y0

    def at(cx, cy):
        inside = (cx >= 0) & (cy >= 0) & (cx < columns) & (cy < rows)
        return np.where(inside, raster[cy.clip(0, rows - 1), cx.clip(0, columns - 1)], 1.0)

    upper = at(x0, y0) * (1 - fx) + at(x0 + 1, y0) * fx
    lower = at(x0, y0 + 1) * (1 - fx) + at(x0 + 1, y0 + 1) * fx
    return upper * (1 - fy) + lower * fy


layers = []
for layer in scene["layers"]:
    raster = np.asarray(Image.open(layer["file"]).convert("L")).astype(np.float64) / 255
    layers.append((layer, raster))


def world(mx, my):
    light = np.full(mx.shape, float(scene["ground"]))
    for layer, raster in layers:
        turn = np.radians(layer.get("turn", 0))
        dx, dy = mx - layer["at"][0], my - layer["at"][1]
        lx = np.cos(turn) * dx + np.sin(turn) * dy
        ly = -np.sin(turn) * dx + np.cos(turn) * dy
        px = lx * layer["dots"] - 0.5
        py = raster.shape[0] - ly * layer["dots"] - 0.5
        grey = sample(raster, px, py)
        if "wood" in layer:
            # Librsvg gives the share of a dot that is covered, 1 for none of it.
            light = light * grey + layer["wood"] * (1 - grey)
        else:
            here = (px > -0.5) & (py > -0.5) & (px < raster.shape[1]) & (py < raster.shape[0])
            light = np.where(here, scene.get("paper", 0.85) * light_of(grey), light)
    return light


back = np.array(scene["back"]).reshape(3, 3)
half = np.hypot(width, height) / 2
fine = scene.get("fine", 2)
picture = np.zeros((height, width))
for sy in range(fine):
    for sx in range(fine):
        for top in range(0, height, 200):
            low = min(height, top + 200)
            ys, xs = np.mgrid[top:low, 0:width].astype(np.float64)
            xs += (sx + 0.5) / fine - 0.5
            ys += (sy + 0.5) / fine - 0.5
            if scene.get("lens", 0) != 0:
                bx = (xs - (width - 1) / 2) / half
                by = (ys - (height - 1) / 2) / half
                r = np.hypot(bx, by)
                u = r.copy()
                for _ in range(20):
                    u = r / (1 + scene["lens"] * u * u)
                share = np.where(r > 0, u / np.where(r > 0, r, 1), 1)
                xs = bx * share * half + (width - 1) / 2
                ys = by * share * half + (height - 1) / 2
            w = back[2, 0] * xs + back[2, 1] * ys + back[2, 2]
            mx = (back[0, 0] * xs + back[0, 1] * ys + back[0, 2]) / w
            my = (back[1, 0] * xs + back[1, 1] * ys + back[1, 2]) / w
            picture[top:low] += world(mx, my)
picture /= fine * fine

blur = scene.get("blur", 0)
if blur > 0:
    reach = int(np.ceil(4 * blur))
    bell = np.exp(-0.5 * (np.arange(-reach, reach + 1) / blur) ** 2)
    bell /= bell.sum()
    padded = np.pad(picture, ((0, 0), (reach, reach)), mode="edge")
    picture = sum(b * padded[:, i : i + width] for i, b in enumerate(bell))
    padded = np.pad(picture, ((reach, reach), (0, 0)), mode="edge")
    picture = sum(b * padded[i : i + height] for i, b in enumerate(bell))

lamp = scene.get("lamp", 0)
if lamp > 0:
    across = np.linspace(0, 1, width)[None, :]
    ys, xs = np.mgrid[0:height, 0:width]
    corner = ((xs - width / 2) ** 2 + (ys - height / 2) ** 2) / half**2
    picture = picture * (1 - lamp * across) * (1 - lamp / 2 * corner)

levels = 255 * srgb_of(picture)
levels += random.normal(0, max(scene.get("noise", 0), 1e-9), levels.shape)
image = Image.fromarray(np.clip(np.rint(levels), 0, 255).astype(np.uint8))
options = {}
if scene.get("dpi", 0):
    options["dpi"] = (scene["dpi"], scene["dpi"])
if scene.get("quality", 0):
    image.convert("RGB").save(scene["out"], "JPEG", quality=int(scene["quality"]), **options)
else:
    image.save(scene["out"], **options)
