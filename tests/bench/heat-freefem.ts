import { type HeatCase, solveCase } from '../../core/heat'

/** A case for FreeFem++: a first mesh as a file of its own format, and a script that solves on it. */
export type FreefemCase = { readonly mesh: string; readonly script: string }

/** Edges of the outlines that carry no film. */
const plainLabel = 1000

/**
 * A heat case for FreeFem++: it starts from the coarse mesh of ours (its own generator refuses outlines that touch all
 * over), solves with quadratic elements and a direct solver, and adapts the mesh in rounds by its own means. Each round
 * prints unknowns, flow, its times, and the area meshed.
 */
export const freefemCase = (it: HeatCase): FreefemCase => {
  const solved = solveCase(it, { share: 1, rounds: 0 })
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
  const { mesh, graph } = solved.value
  const labelled = [...mesh.segmentOf.keys()].filter(e => (mesh.segmentOf[e] ?? -1) >= 0)
  const labelOf = (e: number): number => {
    const surface = graph.surface[mesh.segmentOf[e] ?? 0] ?? -1
    return surface < 0 ? plainLabel : surface + 1
  }
  const lines = [
    `${mesh.vertices} ${mesh.triangles} ${labelled.length}`,
    ...Array.from(mesh.x, (x, v) => `${x} ${mesh.y[v]} 0`),
    ...Array.from(
      mesh.body,
      (b, t) => `${[0, 1, 2].map(i => (mesh.corner[3 * t + i] ?? 0) + 1).join(' ')} ${b}`,
    ),
    ...labelled.map(e => `${(mesh.edgeFrom[e] ?? 0) + 1} ${(mesh.edgeTo[e] ?? 0) + 1} ${labelOf(e)}`),
  ]
  return { mesh: `${lines.join('\n')}\n`, script: script(it) }
}

const script = (it: HeatCase): string => {
  const films = it.surfaces.map((s, i) => `+int1d(Th,${i + 1})(${s.h_W_m2K * 1e-3}*u*v)`)
  const loads = it.surfaces.map((s, i) => `-int1d(Th,${i + 1})(${s.h_W_m2K * 1e-3 * s.air_C}*v)`)
  const [first] = it.surfaces
  return `
mesh Th=readmesh("case.msh");
real[int] lamOf(${it.bodies.length});
${it.bodies.map((body, i) => `lamOf[${i}]=${body.lambda_W_mK};`).join('\n')}
fespace Vh(Th,P2); fespace Ph(Th,P0);
Vh u,v; Ph lam;
real adapted=0, all=0;
real[int] wanted=[0.02,0.01,0.005,0.0025,0.0012,0.0006,0.0003];
for(int round=0; round<wanted.n; round++){
  real from=clock();
  lam=lamOf[region];
  solve heat(u,v,solver=sparsesolver)=int2d(Th)(lam*(dx(u)*dx(v)+dy(u)*dy(v)))
    ${films.join('\n    ')}
    ${loads.join('\n    ')};
  real solved=(clock()-from)*1000;
  all+=solved;
  real q=int1d(Th,1)(${(first?.h_W_m2K ?? 0) * 1e-3}*(${first?.air_C ?? 0}-u));
  cout.precision(10);
  cout << "ROUND " << round << " " << Vh.ndof << " " << q << " " << adapted << " " << solved << " " << all << " " << int2d(Th)(1.) << endl;
  from=clock();
  Th=adaptmesh(Th,u,err=wanted[round],nbvx=400000,hmin=1e-4,iso=true,ratio=3);
  u=u;
  adapted=(clock()-from)*1000;
  all+=adapted;
}
`
}
