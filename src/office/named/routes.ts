import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { problem } from '../../platform/problems/index.ts';
import { type NamedKind, namedRoutes } from './named-record.ts';

const pageWhere = ({ showId, after, take }: { showId: string; after: string; take: number }) => ({
  where: { showId, id: { gt: after } },
  orderBy: { id: 'asc' as const },
  take,
});

const rings: NamedKind = {
  path: 'rings',
  what: 'a ring',
  tag: 'Shows',
  line: 'ring.created',
  lineField: 'ringId',
  create: async (tx, row) => {
    const { showId, name } = row;
    if ((await tx.prisma.ring.count({ where: { showId, name } })) > 0) {
      throw problem('already_exists', {
        errors: [{ field: '/name', message: 'the show has a ring of that name' }],
      });
    }
    return tx.prisma.ring.create({ data: row });
  },
  list: (db, asked) => db.prisma.ring.findMany(pageWhere(asked)),
};

const people: NamedKind = {
  path: 'people',
  what: 'someone who may sit on a panel',
  tag: 'Panels',
  line: 'person.created',
  lineField: 'personId',
  create: (tx, row) => tx.prisma.person.create({ data: row }),
  list: (db, asked) => db.prisma.person.findMany(pageWhere(asked)),
};

const owners: NamedKind = {
  path: 'owners',
  what: 'an owner of horses',
  tag: 'Entries',
  line: 'owner.created',
  lineField: 'ownerId',
  create: (tx, row) => tx.prisma.owner.create({ data: row }),
  list: (db, asked) => db.prisma.owner.findMany(pageWhere(asked)),
};

export const namedRecordRoutes: FeatureRoutes = async (app, { parts }) => {
  for (const kind of [rings, people, owners]) namedRoutes(app, parts, kind);
};
